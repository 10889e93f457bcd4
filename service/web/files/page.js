// A page of the service: the question of its address, which carries what was filled
// in and, behind the #, which rows are done.

import { Asking } from './asking.js';
import { el } from './element.js';

// The unit is the one thing that is kept, and only in this browser.
const keptUnit = 'knitmath.unit';
// Longer addresses are not written: servers and messengers cut them off.
const longestAddress = 6000;

function unitBefore() {
  try {
    return localStorage.getItem(keptUnit) === 'in' ? 'in' : 'cm';
  } catch {
    return 'cm'; // where nothing may be kept
  }
}

function keepUnit(unit) {
  try {
    localStorage.setItem(keptUnit, unit);
  } catch {
    // It is asked for again next time.
  }
}

const main = document.querySelector('[data-question]');
const question = main.dataset.question;
const home = `/ask/${question}`;
const says = el('p', { class: 'says', role: 'status' });

function addressed() {
  const query = new URLSearchParams(asking.store.pairs()).toString();
  const done = asking.done.length ? `#done=${asking.done.join('.')}` : '';
  const tooLong = query.length > longestAddress;
  if (tooLong) say('This is too long for a link; what you typed stays on this page only.');
  return { tooLong, address: `${home}${query && !tooLong ? `?${query}` : ''}${done}` };
}

// programs is the link to the same question on the page for developers.
function programs() {
  const link = document.querySelector('.developers');
  const query = new URLSearchParams(asking.store.pairs()).toString();
  if (link) link.href = `/reference/${question}${query && query.length <= longestAddress ? `?${query}` : ''}`;
}

function say(text) {
  says.textContent = text;
}

async function copy(text, done) {
  try {
    await navigator.clipboard.writeText(text);
    say(done);
  } catch {
    say('The browser does not allow copying here; select the text instead.');
  }
}

async function share() {
  const { address, tooLong } = addressed();
  if (tooLong) return;
  const url = new URL(address, location.href).href;
  if (navigator.share) {
    try {
      await navigator.share({ title: document.title, url });
      return;
    } catch (fault) {
      if (fault.name === 'AbortError') return;
    }
  }
  await copy(url, 'The link is copied: whoever opens it sees the same.');
}

const unit = unitBefore();
const asking = new Asking(main, {
  base: '', files: main.dataset.files, question, unit, key: main.dataset.key,
  // What stands around the form comes with it: nothing moves when the answer does.
  begun: (begun) => {
    if (begun.form.units || begun.made.lengths) main.prepend(units);
    // Left out unsaid, it would be another question that is answered than the link's.
    const unknown = pairs.map(([path]) => path).filter((path) => !begun.store.fieldAt(path));
    if (unknown.length) document.querySelector('header').append(el('p', { class: 'fault', role: 'alert' }, `No field of this question, and left out: ${unknown.join(', ')}`));
    main.append(tools, says);
    main.classList.toggle('set', (begun.made.texts ?? []).some((text) => text.set));
    // On a telephone the answer lies below all that is asked.
    begun.answerBox.id = 'answer';
    begun.answerBox.before(el('a', { class: 'to-answer', href: '#answer' }, 'To the answer'));
  },
  // The start page keeps its own address; its example is a page of its own when shared.
  changed: () => {
    if (location.pathname === home) history.replaceState(null, '', addressed().address);
    programs();
  },
});

const both = [['cm', 'centimetres'], ['in', 'inches']];
const units = el('fieldset', { class: 'units' }, el('legend', {}, 'Lengths in'), ...both.map(([value, label]) =>
  el('label', {}, el('input', { type: 'radio', name: 'unit', value, checked: value === unit, change: () => {
    keepUnit(value);
    asking.setUnit(value);
  } }), label)));

const button = (label, click) => el('button', { type: 'button', click }, label);
const tools = el('div', { class: 'tools' }, button('Copy', () => copy(asking.answer.text(), 'The answer is copied.')),
  button('Share a link', share), button('Print', () => window.print()), button('Clear', () => asking.load([])));

for (const origin of document.querySelectorAll('.origin')) origin.textContent = location.origin;
const pairs = location.pathname === home ? [...new URLSearchParams(location.search)] : [];
const done = (/^#done=([\d.]+)$/.exec(location.hash)?.[1] ?? '').split('.').map(Number).filter((n) => n > 0);
try {
  await asking.start(pairs, done);
  programs();
} catch {
  main.replaceChildren(el('p', { role: 'alert' }, 'This question cannot be shown just now. Please load the page again.'));
}
