// What has been filled in: text by the path of its field, as the service spells
// paths ("pieces[0].times"). One spelling serves the form, the page's address, the
// question and the places of faults.

import { readNumber } from './units.js';

// A value of these fields is asked as it is typed, in parts.
const parts = /[\s,;]+/;

export class Store {
  constructor(form) {
    this.form = form;
    this.values = new Map();
    this.counts = new Map(); // of lists of groups
    this.chosen = new Map(); // which of fields that exclude one another
    this.unread = new Map(); // what could not be read, and why
  }

  // load takes the place of everything with pairs of path and value.
  load(pairs) {
    for (const kept of [this.values, this.counts, this.chosen, this.unread]) kept.clear();
    for (const [path, value] of pairs) {
      if (value === '') continue;
      const before = this.values.get(path);
      this.values.set(path, before === undefined ? value : `${before} ${value}`);
      for (const item of path.matchAll(/\[(\d+)\]/g)) {
        const list = path.slice(0, item.index);
        this.counts.set(list, Math.min(Math.max(this.counts.get(list) ?? 0, Number(item[1]) + 1), 100));
      }
    }
    for (const [path, text] of this.values) this.read(this.fieldAt(path), path, text);
  }

  // read takes a value of a link as the form takes one that is typed.
  read(field, path, text) {
    if (field?.kind === 'flag' && !/^(true|false)$/.test(text)) this.unread.set(path, 'must be true or false');
    if (field?.kind !== 'number' && field?.kind !== 'whole') return;
    const numbers = (field.list ? splitList(field, text) : [text]).map(readNumber);
    const bad = numbers.find((n) => typeof n !== 'number');
    if (bad) this.unread.set(path, bad.fault);
    else this.values.set(path, numbers.join(' '));
  }

  // fieldAt is the single value at a path, where the form has one.
  fieldAt(path) {
    let field = this.form;
    for (const part of path.split('.')) {
      const [, name, item] = /^(\w+)(\[\d\d?\])?$/.exec(part) ?? [];
      field = field?.fields?.find((inner) => inner.name === name && Boolean(item) === (inner.kind === 'group' && Boolean(inner.list)));
    }
    return field?.kind === 'group' ? undefined : field;
  }

  get(path) {
    return this.values.get(path) ?? '';
  }

  set(path, value) {
    this.unread.delete(path);
    if (value === '') this.values.delete(path);
    else this.values.set(path, value);
  }

  count(path) {
    return this.counts.get(path) ?? 0;
  }

  // drop removes an item of a list, and moves those behind it up.
  drop(path, index) {
    for (const kept of [this.values, this.counts, this.chosen, this.unread]) {
      const moved = [];
      for (const [at, value] of [...kept]) {
        const item = at.startsWith(`${path}[`) && /^\[(\d+)\](.*)$/s.exec(at.slice(path.length));
        if (!item || Number(item[1]) < index) continue;
        kept.delete(at);
        if (Number(item[1]) > index) moved.push([`${path}[${item[1] - 1}]${item[2]}`, value]);
      }
      for (const [at, value] of moved) kept.set(at, value);
    }
    this.counts.set(path, this.count(path) - 1);
  }

  // clearUnder forgets all that lies at and below a path.
  clearUnder(path) {
    for (const kept of [this.values, this.counts, this.unread]) {
      for (const at of [...kept.keys()]) {
        if (at === path || at.startsWith(`${path}.`) || at.startsWith(`${path}[`)) kept.delete(at);
      }
    }
  }

  // has tells whether anything is filled in at or below a path.
  has(path) {
    for (const at of [...this.values.keys(), ...this.counts.keys()]) {
      if (at === path || at.startsWith(`${path}.`) || at.startsWith(`${path}[`)) return true;
    }
    return false;
  }

  // choiceOf is which field of those that exclude one another is shown: the one
  // that is filled in, or was chosen, or the first.
  choiceOf(names, path) {
    const key = `${path}|${names[0]}`;
    const chosen = this.chosen.get(key);
    return chosen ?? names.find((name) => this.has(join(path, name))) ?? names[0];
  }

  choose(names, path, name) {
    this.chosen.set(`${path}|${names[0]}`, name);
    for (const other of names) if (other !== name) this.clearUnder(join(path, other));
  }

  // pairs are what is filled in, in the order of the form, for an address.
  pairs() {
    const all = [];
    this.walk(this.form, '', (field, path) => {
      const value = this.values.get(path);
      if (value === undefined || this.unread.has(path)) return;
      if (field.list) for (const part of splitList(field, value)) all.push([path, part]);
      else all.push([path, value]);
    });
    return all;
  }

  // walk calls see for every single value of the form.
  walk(group, path, see) {
    for (const field of group.fields ?? []) {
      const at = join(path, field.name);
      if (field.kind !== 'group') see(field, at);
      else if (!field.list) this.walk(field, at, see);
      else for (let i = 0; i < this.count(at); i++) this.walk(field, `${at}[${i}]`, see);
    }
  }

  // question is the body to ask with.
  question(group = this.form, path = '') {
    const body = {};
    const hidden = new Set((group.choices ?? []).flatMap((names) => names.filter((name) => name !== this.choiceOf(names, path))));
    for (const field of group.fields ?? []) {
      const at = join(path, field.name);
      if (hidden.has(field.name) && !this.has(at)) continue;
      const value = field.kind === 'group' ? this.questionOfGroup(group, field, path, at) : valueOf(field, this.values.get(at));
      if (value !== undefined) body[field.name] = value;
    }
    return body;
  }

  questionOfGroup(group, field, path, at) {
    if (field.list) {
      const items = [];
      for (let i = 0; i < this.count(at); i++) items.push(this.question(field, `${at}[${i}]`));
      return items.length ? items : undefined;
    }
    // An empty one is sent where one must be: the faults are then those of its fields.
    const chosen = (names) => names.length > 1 && this.chosen.get(`${path}|${names[0]}`) === field.name;
    const must = field.required || (group.choices ?? []).some(chosen);
    const inner = this.question(field, at);
    return must || Object.keys(inner).length ? inner : undefined;
  }
}

export function join(path, name) {
  return path ? `${path}.${name}` : name;
}

// splitList parts what stands in one field for a list.
export function splitList(field, value) {
  return (field.kind === 'text' ? value.split('\n') : value.trim().split(parts)).filter((part) => part !== '');
}

function valueOf(field, text) {
  if (text === undefined) return undefined;
  const one = (part) => (field.kind === 'number' || field.kind === 'whole' ? Number(part) : field.kind === 'flag' ? part === 'true' : part);
  return field.list ? splitList(field, text).map(one) : one(text);
}
