// An answer as a person reads it: the sentence, the drawing, the directions with rows
// to tick off, the figures, and where they come from. The parts stay where they are
// and only what is in them changes, so that nothing flickers or closes by itself.

import { el } from './element.js';
import { picture } from './picture.js';
import { forVisitors, plainNotice } from './plain.js';
import { sized } from './units.js';
import { isValue, labelled, standing, valueWord } from './words.js';

// shownApart are the parts of an answer that are no figures.
const shownApart = new Set(['summary', 'directions', 'notices', 'sources', 'outline', 'steps']);

export class Answer {
  // ticked is called with the numbers of the directions that are done.
  constructor(root, made, options, ticked) {
    Object.assign(this, { root, made, options, ticked });
    this.summary = el('p', { class: 'summary', part: 'summary', role: 'status' });
    this.notices = el('ul', { class: 'notices', part: 'notices' });
    this.pictures = el('div', { class: 'pictures' });
    this.directions = el('div', { class: 'directions', part: 'directions' });
    this.figures = el('div', { class: 'figures', part: 'figures' });
    this.texts = el('div', { class: 'texts' });
    this.tables = el('div', {});
    this.all = el('div', {});
    this.sources = el('ul', {});
    this.allBox = el('details', { class: 'fold', hidden: true }, el('summary', {}, 'All the figures'), this.all);
    this.sourcesBox = el('details', { class: 'fold', hidden: true, part: 'sources' }, el('summary', {}, 'Where the figures come from'), this.sources);
    root.replaceChildren(this.summary, this.notices, this.figures, this.texts, this.pictures, this.directions, this.tables,
      this.allBox, this.sourcesBox);
  }

  // tell says a sentence. Who hears the page hears it when it comes, and so only when it is
  // another one.
  tell(text) {
    this.root.ariaBusy = false;
    if (this.summary.textContent !== text) this.summary.textContent = text;
  }

  // stale keeps what is shown, as the answer to what was asked before.
  stale(why) {
    const before = !this.allBox.hidden;
    if (before) this.root.classList.add('stale');
    this.tell(before ? `${why} Below stands the answer from before.` : why);
  }

  // names are what the form calls fields and values.
  show(answer, done, names) {
    const { unit, mark } = this.options;
    this.root.classList.remove('stale');
    this.answer = answer;
    this.tell(answer.summary);
    this.notices.replaceChildren(...(answer.notices ?? []).map((notice) => el('li', {}, plainNotice(notice, names))));
    this.pictures.replaceChildren(...answer.outline
      ? [picture(answer.outline, unit, { manner: this.made.picture, counts: countsOf(this.made.counts, answer) })] : []);
    this.showDirections(answer.directions ?? [], done);
    this.texts.replaceChildren(...(this.made.texts ?? []).map((t) => lines(t, answer, mark)).filter(Boolean));
    this.figures.replaceChildren(...[figuresOf(this.made.figures ?? [], answer, unit)].filter(Boolean));
    this.tables.replaceChildren(...(this.made.tables ?? []).map((t) => table(t, answer, this.options)).filter(Boolean));
    this.all.replaceChildren(treeOf(answer, unit, this.made));
    this.sources.replaceChildren(...(answer.sources ?? []).map((source) =>
      el('li', {}, el('strong', {}, source.figure), `: ${source.citation} `, el('span', { class: 'standing' }, `(${standing(source)})`))));
    this.allBox.hidden = false;
    this.sourcesBox.hidden = !answer.sources?.length;
  }

  // A direction that ends with a colon is a heading of those after it. What is ticked is
  // counted over all of them, so that links stay right. The same rows stay as they are, such as
  // in another unit: whoever is at one of them with the keyboard stays there.
  showDirections(directions, done) {
    const rows = JSON.stringify(directions);
    if (rows !== this.rows) this.replaceDirections(directions);
    this.rows = rows;
    for (const box of this.directions.querySelectorAll('input')) box.checked = done.includes(+box.value);
  }

  replaceDirections(directions) {
    const nodes = [];
    let row = 0;
    let list = null;
    const change = () => this.ticked([...this.directions.querySelectorAll(':checked')].map((box) => +box.value));
    directions.forEach((text, i) => {
      if (isHeading(text)) {
        nodes.push(el('h3', {}, text.slice(0, -1)));
        list = null;
        return;
      }
      row++;
      if (!list) nodes.push(list = el('ol', { start: row }));
      list.append(el('li', { value: row }, el('label', {}, el('input', { type: 'checkbox', value: i + 1, change }),
        el('span', { class: 'place', 'aria-hidden': 'true' }, `${row}.`), el('span', {}, forVisitors(text)))));
    });
    this.directions.replaceChildren(...row ? [el('h2', {}, 'Directions'), ...nodes] : []);
  }

  // text is the answer to be copied.
  text() {
    const { summary, directions = [] } = this.answer ?? { summary: '' };
    const texts = (this.made.texts ?? []).map(({ path }) => at(this.answer ?? {}, path)).filter(Boolean);
    const notices = [...this.notices.children].map((li) => li.textContent);
    let row = 0;
    const rows = directions.map((text) => (isHeading(text) ? text : `${++row}. ${forVisitors(text)}`));
    return [summary, ...texts, ...rows, ...notices].join('\n');
  }
}

const isHeading = (text) => text.endsWith(':');

// at is a value of an answer by its path.
function at(answer, path) {
  return path.split('.').reduce((value, name) => value?.[name], answer);
}

// countsOf are the counts that a drawing shows beside its measures, in words.
function countsOf(counts = {}, answer) {
  const word = (path) => {
    const n = at(answer, path);
    const of = { stitches: 'sts', rows: 'rows', rounds: 'rnds' }[path.split('_').at(-1)];
    return n === undefined || !of ? n ?? '' : `${n} ${of}`;
  };
  return Object.fromEntries(Object.entries(counts).map(([part, ends]) =>
    [part, Object.fromEntries(Object.entries(ends).map(([end, path]) => [end, word(path)]))]));
}

function written(value, name, unit) {
  if (Array.isArray(value)) return value.map((v) => written(v, name, unit)).join(', ');
  if (typeof value === 'number') return sized(value, labelled(name).sign, unit);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return isValue(value) ? valueWord(value) : value;
}

// nameWithUnit is the last part of a path that says a unit: of "length_m.likely" the first.
function nameWithUnit(path) {
  const names = path.split('.').reverse();
  return names.find((name) => labelled(name).sign) ?? names[0];
}

function figuresOf(figures, answer, unit) {
  const rows = figures.map(({ path, label }) => [label, at(answer, path), path]).filter(([, value]) => value !== undefined);
  if (!rows.length) return null;
  return el('dl', { class: 'key' }, ...rows.map(([label, value, path]) =>
    el('div', {}, el('dt', {}, label), el('dd', {}, written(value, nameWithUnit(path), unit) + counted(value, label, path)))));
}

// counted is what a number of the answer counts, where its label does not say it.
function counted(value, label, path) {
  const of = /(?:^|[_.])(stitches|rows|rounds)(?:\.count)?$/.exec(path)?.[1];
  if (!of || /stitch|row|round/i.test(label)) return '';
  return ` ${value === 1 ? { stitches: 'stitch', rows: 'row', rounds: 'round' }[of] : of}`;
}

// lines is a text that is an answer itself, such as rows as patterns write them. One that
// is set in columns is not broken: it moves sideways.
function lines({ path, title, set }, answer, mark) {
  const text = at(answer, path);
  if (!text) return null;
  return el('section', {}, el('h2', {}, title),
    el('pre', { class: set ? 'lines set' : 'lines', part: 'directions', tabindex: '0', role: 'region', 'aria-label': title + mark }, text));
}

// table lists items. Where each says its source, those are numbered below the table, once each.
function table({ path, title, columns, cited }, answer, { unit, mark }) {
  const items = at(answer, path) ?? [];
  if (!items.length) return null;
  const source = (item) => `${item.citation} (${standing(item)})`;
  const sources = cited ? [...new Set(items.map(source))] : [];
  const heads = columns.map((column) => column.label).concat(sources.length > 1 ? ['Source'] : []);
  const row = (item, place) => {
    const cells = columns.map((column) => {
      const value = at(item, column.path);
      return value === undefined ? '' : String(written(value, nameWithUnit(column.path), unit));
    }).concat(sources.length > 1 ? [String(sources.indexOf(source(item)) + 1)] : []);
    cells[0] ||= `${place + 1}.`; // what has no name is known by its place
    return el('tr', {}, ...cells.map((said, i) =>
      el(i ? 'td' : 'th', { scope: i ? null : 'row', class: said.length < 12 && 'short' }, said)));
  };
  return el('div', {}, el('div', { class: 'wide', tabindex: '0', role: 'region', 'aria-label': title + mark }, el('table', {}, el('caption', {}, title),
    el('thead', {}, el('tr', {}, ...heads.map((head) => el('th', { scope: 'col' }, head)))), el('tbody', {}, ...items.map(row)))),
  sources.length ? el(sources.length > 1 ? 'ol' : 'ul', { class: 'cited' }, ...sources.map((text) => el('li', {}, text))) : null);
}

// treeOf is a tree of what stands nowhere else.
function treeOf(answer, unit, made) {
  const apart = new Set([...made.tables ?? [], ...made.texts ?? []].map((t) => t.path));
  return tree(Object.fromEntries(Object.entries(answer).filter(([name]) => !apart.has(name))), unit, true);
}

// tree lists whatever an answer has, by the names of the contract. The number of a thing counts
// from 1: where it is 0 there is none.
function tree(value, unit, top = false) {
  const rows = [];
  for (const [name, inner] of Object.entries(value)) {
    const none = inner === '' || inner === 0 && /_number$/.test(name) || (Array.isArray(inner) && !inner.length);
    if (top && shownApart.has(name) || name === 'steps' || none) continue;
    const { label } = labelled(name);
    const lies = typeof inner === 'object' && inner !== null && !(Array.isArray(inner) && typeof inner[0] !== 'object');
    const shown = !lies ? written(inner, name, unit)
      : Array.isArray(inner) ? el('ol', {}, ...inner.slice(0, 200).map((item) => el('li', {}, tree(item, unit))))
        : tree(inner, unit);
    rows.push(el('div', {}, el('dt', {}, label), el('dd', {}, shown)));
  }
  return el('dl', { class: 'tree' }, ...rows);
}
