// The form of a question, made of its description. What a page says beyond the
// contract (order, groups, labels, hints) comes with it as "made".

import { el } from './element.js';
import { join } from './store.js';
import { control, firstSentence, showAt } from './control.js';
import { plainFault } from './plain.js';
import { fourInches, roughly } from './units.js';

// unnumbered is the path of a field in whichever item of a list.
const unnumbered = (path) => path.replace(/\[\d+\]/g, '[]');

// counts are the fields that are counted over a length.
const counts = ['stitches', 'rows', 'count'];

export class Form {
  // changed is called after every change of a value.
  constructor(root, form, made, store, options, changed) {
    Object.assign(this, { root, form, made, store, options, changed });
    this.places = new Map(); // path -> {label, show(fault)}
    this.touched = new Set();
    this.aside = new Map(); // what was filled in where nothing is asked any more
  }

  render() {
    this.places.clear();
    const left = new Map(this.form.fields.filter((field) => !this.isHidden(field.name)).map((field) => [field.name, field]));
    const take = (names) => names.map((name) => left.get(name)).filter((field) => field && left.delete(field.name));
    const sections = (this.made.groups ?? []).map((group) =>
      el('fieldset', { class: 'section', part: 'section' }, el('legend', {}, group.title),
        group.says ? el('p', { class: 'hint' }, group.says) : null, ...this.section(take(group.fields))));
    if (!sections.length) {
      const needed = take([...left.values()].filter((field) => field.required || inChoice(this.form, field)).map((field) => field.name));
      if (needed.length) sections.push(el('div', { class: 'section', part: 'section' }, ...this.fields(needed, this.form, '')));
    }
    const rest = [...left.values()];
    if (rest.length) {
      const open = sections.length === 0 || this.more?.open || rest.some((field) => this.store.has(field.name));
      const title = el('summary', {}, sections.length ? 'More choices' : 'Choices');
      this.more = el('details', { class: 'section more', part: 'section', open }, title,
        el('div', { class: 'row' }, ...this.fields(rest, this.form, '')));
      sections.push(this.more);
    }
    this.general = el('p', { class: 'fault', role: 'alert', hidden: true });
    this.root.replaceChildren(this.general, ...sections);
  }

  // isHidden tells what a visitor has no use for, unless a link has filled it in.
  isHidden(path) {
    const when = this.made.when?.[unnumbered(path)];
    // In a list it goes by what the same item says.
    const idle = when !== undefined && !when.values.includes(this.store.get(when.field.replace('[]', /\[\d+\]/.exec(path)?.[0])));
    return (idle || (this.made.hide ?? []).includes(unnumbered(path))) && !this.store.has(path);
  }

  // wrote is called after a field has another value. What belongs to some values of it
  // only comes and goes, and the cursor stays.
  wrote(path) {
    this.overInches(path);
    const those = Object.entries(this.made.when ?? {}).filter(([, when]) => when.field === unnumbered(path));
    if (those.length) {
      const value = this.store.get(path);
      const item = /\[\d+\]/.exec(path)?.[0];
      for (const [field, { values }] of those) this.putAside(field.replace('[]', item), !values.includes(value));
      this.render();
      this.root.querySelector(`[data-path="${path}"]`)?.focus();
    }
    this.changed();
  }

  // putAside takes what is filled in out of a field that is idle, and puts it back when it is
  // asked again: of what a shape does not have, none shall be refused.
  putAside(path, idle) {
    const [from, to] = idle ? [this.store.values, this.aside] : [this.aside, this.store.values];
    if (!from.has(path) || to.has(path) && !idle) return;
    to.set(path, from.get(path));
    from.delete(path);
  }

  // overInches counts over 4 in for whoever begins a gauge in inches and says nothing else:
  // over 10 cm, as is usual, it would be nearly 2 % off. A gauge that is there stays as it is.
  overInches(path) {
    const [, group, name] = /^(.*?)([^.]+)$/.exec(path);
    const over = `${group}over_cm`;
    const { input } = this.places.get(over) ?? {};
    if (this.options.unit !== 'in' || !input || !counts.includes(name) || this.touched.has(over)) return;
    if ([...counts, 'over_cm'].some((other) => other !== name && this.store.get(group + other))) return;
    this.store.set(over, fourInches);
    input.value = '4';
  }

  // section renders what stands under a title. A group or list alone there needs none
  // of its own.
  section(fields) {
    const [only] = fields;
    if (fields.length !== 1 || only.kind !== 'group') return this.fields(fields, this.form, '');
    return [only.list ? this.list(only, only.name, true) : this.group(only, only.name, true, true)];
  }

  // fields renders fields of a group, and what few people need behind a fold.
  fields(fields, group, path) {
    const later = fields.filter((field) => this.made.later?.includes(unnumbered(join(path, field.name))));
    const nodes = this.beside(fields.filter((field) => !later.includes(field)), group, path);
    const rest = this.beside(later, group, path);
    if (!rest.length) return nodes;
    const open = later.some((field) => this.store.has(join(path, field.name)));
    return [...nodes, el('details', { class: 'later', open }, el('summary', {}, 'More of this'), el('div', { class: 'row' }, ...rest))];
  }

  // beside renders fields beside one another; those that exclude one another become one.
  beside(fields, group, path) {
    const done = new Set();
    const nodes = [];
    for (const field of fields) {
      if (done.has(field.name) || this.isHidden(join(path, field.name))) continue;
      const choice = (group.choices ?? []).find((names) => names.includes(field.name)) ?? [];
      const among = fields.filter((other) =>
        choice.includes(other.name) && !done.has(other.name) && !this.isHidden(join(path, other.name)));
      among.forEach((other) => done.add(other.name));
      nodes.push(among.length > 1 ? this.either(among, path) : this.field(field, path));
    }
    return nodes;
  }

  // either renders fields of which one is given: a choice, and the one chosen.
  either(fields, path) {
    const names = fields.map((field) => field.name);
    const box = el('div', { class: 'either' });
    const show = (focus) => {
      const name = this.store.choiceOf(names, path);
      const pick = el('select', { 'aria-label': `Given as: ${this.wording(fields[0], join(path, fields[0].name)).label}`, part: 'input', change: () => {
        this.store.choose(names, path, pick.value);
        show(true);
        this.changed();
      } }, ...fields.map((field) => {
        const { label } = this.wording(field, join(path, field.name));
        const whole = field.unit ? `${label}, in ${this.unitWord(field.unit)}` : label;
        return el('option', { value: field.name, selected: field.name === name }, whole);
      }));
      for (const field of fields) this.places.delete(join(path, field.name));
      const shown = fields.find((field) => field.name === name);
      const given = this.field(shown, path, true);
      box.replaceChildren(el('label', { class: 'given' }, el('span', { class: 'hint' }, 'Given as'), pick), given);
      const place = this.places.get(join(path, name));
      for (const field of fields) if (!this.places.has(join(path, field.name))) this.places.set(join(path, field.name), place);
      if (focus) pick.focus();
    };
    show(false);
    return box;
  }

  unitWord(sign) {
    return sign === 'cm' && this.options.unit === 'in' ? 'inches' : { cm: 'cm', '%': 'percent', '°': 'degrees' }[sign] ?? sign;
  }

  // inUnit writes the lengths of a hint in the visitor's unit, but where it compares both.
  inUnit(text) {
    if (/\d in\b/.test(text)) return text;
    return text.replace(/(\d+(?:\.\d+)?) cm\b/g, (_, n) => roughly(Number(n), this.options.unit));
  }

  // wording is what a field is called and what is said of it.
  wording(field, path) {
    const at = unnumbered(path);
    const known = this.made.labels?.[at] ?? this.made.labels?.[field.name];
    const hint = this.made.hints?.[at] ?? this.made.hints?.[field.name];
    // Of "Height rows" a person would say: height, in rows.
    const number = field.kind === 'number' || field.kind === 'whole';
    const plain = number ? field.label.replace(/ (stitches|rows|rounds)$/, ', in $1') : field.label;
    return { label: known ?? plain, hint: this.inUnit(hint ?? ''), help: hint === undefined ? this.inUnit(field.help ?? '') : '' };
  }

  // emptyWord is what stands in a choice of which nothing is chosen.
  emptyWord(field, path) {
    return this.made.empty?.[unnumbered(path)] ?? this.made.empty?.[field.name];
  }

  // field renders a field of any kind. A group that was chosen among others is open.
  field(field, path, chosen = false) {
    const at = join(path, field.name);
    if (field.kind === 'group') return field.list ? this.list(field, at) : this.group(field, at, chosen);
    const place = control(this, field, at);
    this.places.set(at, place);
    return place.node;
  }

  // group renders a part of the question; what need not be given is folded up.
  group(field, path, chosen, bare = false) {
    const { label, hint, help } = this.wording(field, path);
    const fault = el('p', { class: 'fault', hidden: true });
    const inside = [hint || help ? el('p', { class: 'hint' }, hint || firstSentence(help)) : null, fault,
      el('div', { class: 'row' }, ...this.fields(field.fields ?? [], field, path))];
    this.places.set(path, { label, show: (text, quiet) => showAt(fault, text, quiet) });
    if (bare) return el('div', { class: 'bare', part: 'group' }, ...inside);
    if (field.required || chosen) return el('fieldset', { class: 'group', part: 'group' }, el('legend', {}, label), ...inside);
    return el('details', { class: 'group', part: 'group', open: this.store.has(path) }, el('summary', {}, label), ...inside);
  }

  // list renders any number of groups, with buttons to add and to remove one.
  list(field, path, bare = false) {
    const { label, hint, help } = this.wording(field, path);
    const fault = el('p', { class: 'fault', hidden: true });
    const box = el('div', { class: 'items' });
    const add = el('button', { type: 'button', part: 'button', 'aria-label': `Add one more: ${label}`, click: () => {
      this.store.counts.set(path, this.store.count(path) + 1);
      show();
      box.lastElementChild?.querySelector('input, select, textarea')?.focus();
      this.changed();
    } }, 'Add one more');
    const show = () => {
      for (const at of [...this.places.keys()]) if (at.startsWith(`${path}[`)) this.places.delete(at);
      box.replaceChildren(...Array.from({ length: this.store.count(path) }, (_, i) => {
        const named = `Remove ${label} ${i + 1}`;
        const remove = el('button', { type: 'button', class: 'remove', part: 'button', 'aria-label': named, click: () => {
          this.store.drop(path, i);
          show();
          add.focus();
          this.changed();
        } }, 'Remove');
        return el('fieldset', { class: 'group item', part: 'group' }, el('legend', {}, `${label} ${i + 1}`),
          el('div', { class: 'row' }, ...this.fields(field.fields ?? [], field, `${path}[${i}]`)), remove);
      }));
      add.hidden = this.store.count(path) >= (field.max_items ?? 100);
    };
    if (field.required && this.store.count(path) === 0) this.store.counts.set(path, 1);
    show();
    this.places.set(path, { label, show: (text, quiet) => showAt(fault, text, quiet) });
    return el(bare ? 'div' : 'fieldset', { class: bare ? 'bare' : 'list' }, bare ? null : el('legend', {}, label),
      hint || help ? el('p', { class: 'hint' }, hint || firstSentence(help)) : null, fault, box, add);
  }

  // showFaults puts each fault beside its field, or as near above it as there is one.
  showFaults(violations) {
    for (const place of new Set(this.places.values())) place.show('');
    const general = [];
    for (const violation of violations) {
      let at = violation.field ?? '';
      while (at && !this.places.has(at)) at = at.slice(0, Math.max(at.lastIndexOf('.'), at.lastIndexOf('['), 0));
      const place = this.places.get(at);
      const text = plainFault(violation, place?.field, this.options.unit, this.names, this.store.get(at) !== '');
      if (place) place.show(text, this.isWanting(violation.reason, at));
      else general.push(text);
    }
    showAt(this.general, general.join(' '));
  }

  // isWanting tells what is only not given yet.
  isWanting(reason, path) {
    return reason === 'REQUIRED' && !this.touched.has(path) && !this.store.get(path);
  }

  // names are what the form calls fields and values, for what is said of them.
  get names() {
    return { label: (path) => this.labelOf(path), value: (name) => this.valueOf(name) };
  }

  // labelOf is the label of the field at a path, with the item of a list it lies in.
  labelOf(path) {
    const item = /^(.*)\[(\d+)\]/.exec(path);
    const at = item && item[0] !== path ? path : item?.[1] ?? path;
    const near = () => [...this.places].find(([p]) => p.endsWith(`.${path}`))?.[1];
    const label = (this.places.get(path) ?? this.places.get(at) ?? near())?.label ?? '';
    if (!label) return label;
    if (!item) {
      const group = this.places.get(path.replace(/\.[^.]*$/, ''))?.label;
      const alike = [...this.places].filter(([p, place]) => p.includes('.') && place.label === label).length > 1;
      return alike && path.includes('.') && group ? `${label}: ${group}` : label;
    }
    const list = `${this.places.get(item[1])?.label ?? ''} ${Number(item[2]) + 1}`;
    return item[0] === path ? list : `${label}, ${list}`;
  }

  // valueOf is the label of a value of an enum, wherever in the form it may be chosen.
  valueOf(name, group = this.form) {
    for (const field of group.fields ?? []) {
      const found = field.options?.find((option) => option.value === name)?.label ?? (field.fields && this.valueOf(name, field));
      if (found && found !== name.toLowerCase().replaceAll('_', ' ')) return found;
    }
    return name.toLowerCase().replaceAll('_', ' ');
  }
}

function inChoice(form, field) {
  return (form.choices ?? []).some((names) => names.includes(field.name));
}
