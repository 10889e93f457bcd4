// A question with its form and its answer, wherever it stands: on a page of the
// service or in an element on a page of somebody else.

import { Answer } from './answer.js';
import { el } from './element.js';
import { Form } from './form.js';
import { Store } from './store.js';
import { fourInches } from './units.js';
import { knowValues } from './words.js';

// Typing is answered when it pauses.
const pause = 200;
// A longer question is put in a body: an address that is longer is cut off somewhere.
const longest = 4000;

export class Asking {
  // what: {base, files, question, unit, key, locked, fixed, mark, begun, changed, answered, refused}.
  // base is where the service is, files where the descriptions of its questions are;
  // fixed are pairs of path and value that cannot be changed, locked their paths; mark tells
  // it from the same question elsewhere on a page, for those who hear what things are called.
  constructor(root, what) {
    Object.assign(this, { root, what });
    this.options = { unit: what.unit, locked: what.locked, mark: what.mark ?? '', brief: false };
    this.asked = 0;
  }

  async start(pairs, done = []) {
    const file = `${this.what.files}forms/${this.what.question.replace('/', '.')}.json`;
    const reply = await fetch(file, { mode: 'cors', credentials: 'omit' }).catch(() => {
      throw new Error(`${this.what.base} does not answer, or its -allowed-origins do not have ${location.origin}`);
    });
    if (!reply.ok) throw new Error(`there is no question “${this.what.question}” (${reply.status})`);
    Object.assign(this, await reply.json());
    knowValues(this.form.enums ?? []);
    reword(this.form, this.made.values ?? {});
    this.store = new Store(this.form);
    this.asExample = !pairs.length;
    this.fill(pairs.length ? pairs : this.example());
    this.done = done;
    const called = (this.made.title ?? this.form.title) + this.options.mark;
    this.formBox = el('form', { class: 'asks', part: 'form', novalidate: true, 'aria-label': `Question: ${called}`, submit: (e) => {
      e.preventDefault();
      this.ask();
    } });
    this.answerBox = el('section', { class: 'answer', part: 'answer', 'aria-label': `Answer: ${called}` });
    this.root.replaceChildren(this.formBox, this.answerBox);
    this.fields = new Form(this.formBox, this.form, this.made, this.store, this.options, () => this.changed());
    this.answer = new Answer(this.answerBox, this.made, this.options, (ticked) => {
      this.done = ticked;
      this.what.changed?.();
    });
    this.fields.render();
    this.what.begun?.(this);
    await this.ask();
  }

  // fill takes the place of all values, but for those that cannot be changed.
  fill(pairs) {
    this.store.load([...pairs.filter(([path]) => !this.what.locked?.has(path)), ...(this.what.fixed ?? [])]);
  }

  // example is what a page begins with. In inches it is another one, of whole and half
  // inches and with the gauge over 4 in, and not the same one oddly written. It has nothing of
  // a group of which something is fixed, nor of what excludes that: none of it would fit.
  example() {
    const head = (path) => path.split(/[.[]/)[0];
    const fixed = (this.what.fixed ?? []).map(([path]) => head(path));
    const choices = (this.form.choices ?? []).filter((names) => names.some((name) => fixed.includes(name)));
    const not = new Set([...fixed, ...choices.flat()]);
    const pairs = Object.entries(this.made.example ?? exampleOf(this.form)).filter(([path]) => !not.has(head(path)));
    if (this.options.unit !== 'in') return pairs;
    const names = new Set(pairs.map(([path]) => path));
    const inches = pairs.map(([path, value]) => [path, /_cm$/.test(path) && !path.endsWith('over_cm') ? nearInches(value) : value]);
    for (const [path] of pairs) {
      const over = path.replace(/auge\.stitches$/, 'auge.over_cm');
      if (over !== path && !names.has(over)) inches.push([over, fourInches]);
    }
    return inches;
  }

  changed() {
    this.asExample = false;
    this.done = [];
    this.what.changed?.();
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => this.ask(), pause);
  }

  // load begins anew with other values.
  load(pairs) {
    this.fill(pairs);
    this.asExample = false;
    this.done = [];
    this.render();
    this.what.changed?.();
  }

  // render shows the form anew, such as in another unit, and asks again.
  render() {
    this.fields.render();
    this.ask();
  }

  setUnit(unit) {
    this.options.unit = unit;
    if (this.asExample) this.fill(this.example());
    this.render();
  }

  async ask() {
    clearTimeout(this.waiting);
    this.going?.abort();
    const turn = ++this.asked;
    this.answerBox.ariaBusy = true; // what is shown is the answer from before
    const unread = [...this.store.unread].map(([field, description]) => ({ field, description, reason: 'WRONG_TYPE' }));
    if (unread.length) return this.refuse(unread);
    this.going = new AbortController();
    let reply;
    let body;
    try {
      reply = await fetch(...this.request(this.going.signal));
      body = await reply.json();
    } catch {
      if (turn !== this.asked) return; // what is aborted was asked before
      return this.fail('The service cannot be reached just now. What you typed is kept; it will be asked again with the next change.');
    }
    if (turn !== this.asked) return;
    if (reply.ok) this.show(body);
    else this.refuseWith(body);
  }

  // request is what to fetch: in a link where that may be, which caches keep.
  request(signal) {
    const body = this.store.question();
    if (this.form.units) body.display_unit = this.options.unit === 'in' ? 'DISPLAY_UNIT_IN' : 'DISPLAY_UNIT_CM';
    if (this.form.outline) body.with_outline = true;
    Object.assign(body, this.made.always);
    const headers = this.what.key ? { 'X-Api-Key': this.what.key } : {};
    const shared = { signal, mode: 'cors', credentials: 'omit' };
    // Browsers say of a question in a body alone that it comes from a page of the
    // service itself, and a publishable key is good for those that say whence.
    const own = new URL(this.what.base, location.href).origin === location.origin;
    const query = this.form.get && !(own && this.what.key) ? queryOf(body) : null;
    if (query !== null && query.length < longest) return [`${this.what.base}${this.form.path}?${query}`, { ...shared, headers }];
    headers['Content-Type'] = 'application/json';
    return [`${this.what.base}${this.form.path}`, { ...shared, method: 'POST', headers, body: JSON.stringify(body) }];
  }

  show(answer) {
    this.fields.showFaults([]);
    this.answer.show(answer, this.done, this.fields.names);
    this.what.answered?.({ question: this.what.question, values: this.store.question(), answer });
  }

  refuseWith(body) {
    const detail = (body.details ?? []).find((d) => d.field_violations);
    if (detail) return this.refuse(detail.field_violations);
    this.fail(`The service does not answer: ${body.message ?? 'no reason was given'}.`);
  }

  refuse(violations) {
    this.fields.showFaults(violations);
    const wanting = violations.every((v) => this.fields.isWanting(v.reason, v.field));
    const n = violations.length;
    this.answer.stale(wanting ? 'Fill in what needs a value, and the answer stands here.'
      : `No answer yet: ${n === 1 ? 'one thing needs' : `${n} things need`} attention where it is marked.`);
    this.what.refused?.({ question: this.what.question, values: this.store.question(), violations });
  }

  fail(text) {
    this.answer.stale(text);
    this.what.refused?.({ question: this.what.question, values: this.store.question(), violations: [], message: text });
  }
}

// reword calls the values that may be chosen what a person does.
function reword(group, values) {
  for (const field of group.fields ?? []) {
    for (const option of field.options ?? []) option.label = values[option.value] ?? option.label;
    reword(field, values);
  }
}

// nearInches is the length in cm of the half inches that are nearest.
function nearInches(cm) {
  return String(Number(((Math.round((Number(cm) / 2.54) * 2) / 2) * 2.54).toFixed(4)));
}

// exampleOf fills in what must be given with the contract's own examples, one of each
// choice.
function exampleOf(form) {
  const pairs = {};
  const fill = (group, path) => {
    for (const field of group.fields ?? []) {
      const at = path ? `${path}.${field.name}` : field.name;
      if (!field.required) continue;
      if (field.kind === 'group') fill(field, field.list ? `${at}[0]` : at);
      else if (field.kind === 'choice') pairs[at] = field.options[0].value;
      else if (field.example !== undefined) pairs[at] = String(field.example);
    }
  };
  fill(form, '');
  return pairs;
}

// queryOf writes a question as the query of a link, or null where it holds a list of
// groups, which a link cannot.
export function queryOf(body) {
  const query = new URLSearchParams();
  const add = (value, path) => {
    if (Array.isArray(value)) return value.every((item) => typeof item !== 'object' && add(item, path));
    if (typeof value === 'object') return Object.entries(value).every(([name, inner]) => add(inner, path ? `${path}.${name}` : name));
    query.append(path, value);
    return true;
  };
  return add(body, '') ? query.toString() : null;
}
