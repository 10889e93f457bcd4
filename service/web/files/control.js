// A field with its label, its unit, what is said of it, and its fault.

import { el } from './element.js';
import { splitList } from './store.js';
import { kept, readNumber, signIn, typed } from './units.js';

let made = 0;

// control is a field of a form at a path of its question.
export function control(form, field, path) {
  const { label, hint, help } = form.wording(field, path);
  const id = `field-${++made}`;
  const fault = el('p', { class: 'fault', id: `${id}-fault`, hidden: true });
  const says = hint || (help && !form.options.brief ? firstSentence(help) : '');
  const about = says ? el('p', { class: 'hint', id: `${id}-hint` }, says) : null;
  // The unit stands beside the field, and is read with it.
  const described = `${field.unit ? `${id}-unit ` : ''}${about ? `${id}-hint ` : ''}${id}-fault`;
  const locked = form.options.locked?.has(path) ?? false;
  const write = (value) => {
    form.touched.add(path);
    form.store.set(path, value);
    form.wrote(path);
  };
  const shared = { id, part: 'input', 'aria-describedby': described, 'data-path': path, disabled: locked };
  const input = inputOf(form, field, path, shared, write);
  const sign = field.unit ? el('span', { class: 'unit', part: 'unit', id: `${id}-unit` }, signIn(field.unit, form.options.unit)) : null;
  const flag = field.kind === 'flag';
  const several = field.kind === 'choice' && field.list;
  const name = several ? el('span', { class: 'label', id: `${id}-label`, part: 'label' }, label)
    : el('label', { for: id, part: 'label' }, label);
  if (several) input.setAttribute('aria-labelledby', `${id}-label`);
  const node = el('div', { class: `field ${flag ? 'flag' : field.kind}`, part: 'field' },
    flag ? null : name, el('span', { class: 'typed' }, input, flag ? name : null, sign), about, fault);
  return {
    node, label, input, field,
    // show says what is wrong. What is only not yet given is said quietly.
    show(text, quiet = false) {
      showAt(fault, text, quiet);
      fault.classList.toggle('quiet', quiet);
      if (text && !quiet) input.setAttribute('aria-invalid', 'true');
      else input.removeAttribute('aria-invalid');
    },
  };
}

function inputOf(form, field, path, shared, write) {
  const value = form.store.get(path);
  if (field.kind === 'flag') {
    return el('input', { ...shared, type: 'checkbox', checked: value === 'true', change: (e) => write(e.target.checked ? 'true' : '') });
  }
  if (field.kind === 'choice') return field.list ? severalOf(field, value, shared, write) : choiceOf(form, field, path, value, shared, write);
  if (field.kind === 'text') return textOf(field, value, shared, write);
  return numberOf(form, field, path, value, shared, write);
}

function choiceOf(form, field, path, value, shared, write) {
  const usual = field.options.find((option) => option.value === field.default);
  const empty = form.emptyWord(field, path) ?? (usual ? `usual: ${usual.label}` : field.required ? 'choose one' : 'as usual');
  return el('select', { ...shared, change: (e) => write(e.target.value) }, el('option', { value: '' }, empty),
    ...field.options.map((option) => el('option', { value: option.value, selected: option.value === value }, option.label)));
}

function severalOf(field, value, shared, write) {
  const chosen = new Set(splitList(field, value));
  const box = el('span', { id: shared.id, class: 'several', role: 'group' });
  for (const option of field.options) {
    const tick = el('input', { type: 'checkbox', checked: chosen.has(option.value), disabled: shared.disabled, change: () => {
      if (tick.checked) chosen.add(option.value);
      else chosen.delete(option.value);
      write([...chosen].join(' '));
    } });
    box.append(el('label', {}, tick, ` ${option.label}`));
  }
  return box;
}

function textOf(field, value, shared, write) {
  const listen = (e) => write(e.target.value);
  const short = !field.list && (field.longest ?? 0) <= 300;
  if (short) return el('input', { ...shared, type: 'text', autocomplete: 'off', value, input: listen });
  const area = el('textarea', { ...shared, rows: field.list ? 3 : 8, spellcheck: 'false', input: listen });
  area.value = value;
  return area;
}

// numberOf is no input of type number: that swallows commas and fractions without a
// word, and changes its value when a page is scrolled.
function numberOf(form, field, path, value, shared, write) {
  const { unit } = form.options;
  const one = (part) => {
    const n = readNumber(part);
    if (typeof n !== 'number') return n;
    return kept(n, field.unit, unit);
  };
  const placeholder = typed(String(field.default ?? ''), field.unit, unit);
  // Keyboards of telephones for numbers have no minus, and often no space.
  const keys = field.min < 0 || field.list ? 'text' : field.kind === 'whole' ? 'numeric' : 'decimal';
  return el('input', { ...shared, type: 'text', inputmode: keys, autocomplete: 'off', placeholder,
    value: typed(value, field.unit, unit), input: (e) => {
      const text = e.target.value.trim();
      const parts = field.list ? splitList(field, text) : text === '' ? [] : [text];
      const read = parts.map(one);
      const bad = read.find((n) => typeof n !== 'number');
      write(bad ? '' : read.join(' '));
      if (bad) {
        form.store.unread.set(path, bad.fault);
        form.changed();
      }
    } });
}

// showAt shows a fault, and unfolds what it lies in unless it is only not yet given.
export function showAt(node, text, quiet = false) {
  node.textContent = text;
  node.hidden = text === '';
  if (!text || quiet) return;
  for (let fold = node.closest('details'); fold; fold = fold.parentElement.closest('details')) fold.open = true;
}

// Ranges are said where they are broken, and lengths are typed in the visitor's unit.
const ranges = /(, in (cm|mm|m|g|percent|degrees|rounds|rows)\b)?(, -?[\d.,]+ to [\d.,]+\b|, (a millionth|at most) .*| -?[\d.,]+ to [\d.,]+\.).*$/;

// firstSentence is as much of the contract's words as stands beside a field unasked: what
// it means, and nothing where that is only its name again.
export function firstSentence(text) {
  const first = /^.*?\.(?=\s+[A-Z]|$)/s.exec(text)?.[0] ?? text;
  const said = first.replace(ranges, '').replace(/, in (cm|mm|percent|degrees)(?=[,.]|$)/, '').replace(/[.,;:]$/, '');
  return said.split(' ').length > 3 ? `${said}.` : '';
}
