// A question as JSON beside its answer, and how a program asks it. What is asked at
// first is what the page's address carries, or the example of the question's own page.

import { el } from './element.js';
import { recipes } from './recipes.js';
import { Store } from './store.js';

const root = document.querySelector('[data-question]');
const { question, files, key } = root.dataset;

const written = (value) => JSON.stringify(value, null, 2);

const text = el('textarea', {
  id: 'asked', spellcheck: 'false', autocomplete: 'off', 'aria-describedby': 'asked-fault', input: () => recipe(),
});
const fault = el('p', { class: 'fault', id: 'asked-fault', role: 'alert', hidden: true });
const reply = el('pre', { tabindex: '0', role: 'region', 'aria-label': 'The reply' });
const says = el('span', { role: 'status' });
const copied = el('span', { role: 'status' });
const shown = el('pre', { tabindex: '0', role: 'region', 'aria-label': 'The program' });
const languages = el('fieldset', { class: 'languages' }, el('legend', {}, 'The same from'), ...Object.keys(recipes).map((name, i) =>
  el('label', {}, el('input', { type: 'radio', name: 'language', value: name, checked: i === 0, change: () => recipe() }), name)));

let path = '';

// read is what stands in the field, or nothing where that is no JSON.
function read() {
  let body;
  try {
    body = JSON.parse(text.value);
  } catch (wrong) {
    fault.textContent = `This is not JSON yet: ${wrong.message}`;
  }
  fault.hidden = body !== undefined;
  if (body === undefined) text.setAttribute('aria-invalid', 'true');
  else text.removeAttribute('aria-invalid');
  return body;
}

function recipe() {
  const body = read();
  if (body === undefined) return;
  const language = root.querySelector('[name=language]:checked').value;
  shown.textContent = recipes[language]({ origin: location.origin, path, question, body });
}

async function ask() {
  if (read() === undefined) return;
  says.textContent = 'Asking …';
  const began = performance.now();
  try {
    const headers = { 'Content-Type': 'application/json', ...(key ? { 'X-Api-Key': key } : {}) };
    const got = await fetch(path, { method: 'POST', headers, body: text.value, credentials: 'omit' });
    const said = await got.text();
    const took = performance.now() - began;
    reply.textContent = written(JSON.parse(said));
    says.textContent = `${got.status} ${got.ok ? 'OK' : 'refused'}, ${said.length.toLocaleString('en')} characters, ${took.toFixed(0)} ms`;
  } catch {
    says.textContent = 'The service cannot be reached just now.';
  }
}

async function copy() {
  try {
    await navigator.clipboard.writeText(shown.textContent);
    copied.textContent = 'Copied.';
  } catch {
    copied.textContent = 'The browser does not allow copying here; select the text instead.';
  }
}

async function begin() {
  const got = await fetch(`${files}forms/${question.replace('/', '.')}.json`, { credentials: 'omit' });
  if (!got.ok) throw new Error('no description');
  const { form, made } = await got.json();
  path = form.path;
  const store = new Store(form);
  const addressed = [...new URLSearchParams(location.search)];
  store.load(addressed.length ? addressed : Object.entries(made.example ?? {}));
  text.value = written(store.question());
  root.replaceChildren(
    el('div', { class: 'both' },
      el('div', { class: 'side' }, el('label', { for: 'asked' }, 'The question'), text, fault),
      el('div', { class: 'side' }, el('span', { class: 'label' }, 'The reply'), reply)),
    el('p', { class: 'does' }, el('button', { type: 'button', click: ask }, 'Ask'), says),
    el('div', { class: 'recipe' }, languages, shown,
      el('p', { class: 'does' }, el('button', { type: 'button', click: copy }, 'Copy'), copied)));
  text.addEventListener('keydown', (e) => {
    if (e.key === 'Enter' && (e.ctrlKey || e.metaKey)) ask();
  });
  recipe();
  await ask();
}

try {
  await begin();
} catch {
  root.replaceChildren(el('p', { role: 'alert' }, 'This question cannot be tried just now. Please load the page again.'));
}
