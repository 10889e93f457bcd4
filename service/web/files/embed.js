// An element that puts a question on a page of somebody else:
//
//	<script src="https://…/embed/v1.js" async></script>
//	<knitmath-question question="yarn/estimateYarn"></knitmath-question>
//
// It lives in a shadow root, so that neither page's styles nor names reach the other.
// Around it stands a function that has css, how it looks, and files, where they lie.

import { Asking } from './asking.js';
import { el } from './element.js';

// The service is where this script came from. Only while it runs is that known.
const base = new URL(document.currentScript.src).origin;

const units = ['cm', 'in'];

// What a page hands down to all that lies in it stays outside, but for its light or dark.
const apart = '.knitmath { all: initial; color-scheme: inherit; display: block; direction: ltr; }';
const placed = ':host { display: block; } .knitmath { padding: 1rem; border-radius: var(--round); }';
// A style sheet of its own needs no leave of the page's policy, as style elements do.
const sheet = new CSSStyleSheet();

// measure makes the sheet once, for the letters that the visitor has chosen: many a page
// makes its root's smaller, to count in tens, and rem with them.
function measure(root) {
  if (sheet.cssRules.length) return;
  const letter = root.appendChild(el('span'));
  letter.style.all = 'initial';
  const size = parseFloat(getComputedStyle(letter).fontSize) || 16;
  letter.remove();
  sheet.replaceSync(`${apart}${css}${placed}`.replace(/(\d*\.?\d+)rem\b/g, (_, n) => `${n * size}px`));
}

class KnitmathQuestion extends HTMLElement {
  static observedAttributes = ['question', 'units', 'preset', 'locked', 'key'];

  connectedCallback() {
    if (!this.shadowRoot) {
      this.attachShadow({ mode: 'open' }).adoptedStyleSheets = [sheet];
      measure(this.shadowRoot);
    }
    this.begin();
  }

  attributeChangedCallback(name, before, now) {
    if (!this.isConnected || !this.shadowRoot || before === now) return;
    if (name === 'units' && this.asking?.fields && units.includes(this.unit)) this.asking.setUnit(this.unit);
    else this.begin();
  }

  get unit() {
    return this.getAttribute('units') ?? 'cm';
  }

  // mark is the place of this element among those that ask the same, where it is not alone.
  get mark() {
    const alike = [...document.querySelectorAll(`${this.localName}[question="${CSS.escape(this.getAttribute('question') ?? '')}"]`)];
    return alike.length > 1 ? `, ${alike.indexOf(this) + 1}` : '';
  }

  // pairs are the values of an attribute, written as in a link: "gauge.stitches=22&gauge.rows=30".
  pairs(name) {
    return [...new URLSearchParams(this.getAttribute(name) ?? '')];
  }

  async begin() {
    const box = el('div', { class: 'knitmath', part: 'box' });
    const locked = this.pairs('locked');
    const fixed = new Set(locked.map(([path]) => path));
    const asking = new Asking(box, {
      base, files: base + files, question: this.getAttribute('question') ?? '', unit: this.unit, key: this.getAttribute('key'),
      locked: fixed, fixed: locked, mark: this.mark,
      begun: ({ store }) => this.judge([...locked, ...this.pairs('preset')].map(([path]) => path).filter((path) => !store.fieldAt(path))),
      answered: (detail) => this.tell('knitmath-answer', detail),
      refused: (detail) => this.tell('knitmath-refusal', detail),
    });
    this.asking = asking;
    this.shadowRoot.replaceChildren(box);
    try {
      await asking.start(this.pairs('preset').filter(([path]) => !fixed.has(path)));
    } catch ({ message, violations }) {
      if (this.asking !== asking) return;
      asking.fields = undefined; // another unit begins it anew
      console.error(`knitmath-question: ${message}`);
      box.replaceChildren(el('p', { role: 'alert' }, `This question cannot be shown${violations ? `: ${message}` : ' just now'}.`));
      this.tell('knitmath-refusal', { question: asking.what.question, violations: violations ?? [], message });
    }
  }

  // judge refuses what the page sets and the question does not have. Left out, it would be
  // an example that is answered, and taken for what was meant.
  judge(unknown) {
    const description = 'is no field of this question';
    const violations = unknown.map((field) => ({ field, reason: 'UNKNOWN_FIELD', description }));
    if (!units.includes(this.unit)) violations.push({ field: 'units', reason: 'WRONG_TYPE', description: 'must be cm or in' });
    const message = violations.map((v) => `“${v.field}” ${v.description}`).join('; ');
    if (message) throw Object.assign(new Error(message), { violations });
  }

  tell(name, detail) {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
  }
}

if (!customElements.get('knitmath-question')) customElements.define('knitmath-question', KnitmathQuestion);
