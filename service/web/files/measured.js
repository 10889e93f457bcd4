// Measures on a drawing: a thin line from end to end, and what it comes to. Their room is
// that of the letters on a telephone, which are larger than elsewhere.

import { said } from './canvas.js';
import { drawn } from './element.js';

// Room for a measure below or above what is drawn, for one more line of words there, and
// for one to its right.
export const room = { line: 46, word: 28, side: 134 };
const tick = 5;

const stroke = (...parts) => drawn('path', { d: parts.map((part) => part.map((n) => (n.toFixed ? n.toFixed(1) : n)).join(' ')).join(''),
  class: 'measure' });

// across measures from one x to another, with its words below the line, or above it.
export function across(from, to, y, text, above = false) {
  return [stroke(['M', from, y, 'H', to], ['M', from, y - tick, 'V', y + tick], ['M', to, y - tick, 'V', y + tick]),
    said(text, (from + to) / 2, above ? y - 10 : y + 26, 'middle')];
}

// beside measures from a foot up, with its lines of words to the right.
export function beside(x, foot, top, lines) {
  return [stroke(['M', x, foot, 'V', top], ['M', x - tick, foot, 'H', x + tick], ['M', x - tick, top, 'H', x + tick]),
    said(lines, x + 9, (foot + top) / 2 + 7 - (lines.length - 1) * 12)];
}

// within measures a piece up its middle: the line stops for its words, for which a piece may
// be too low or too narrow.
export function within(x, foot, top, lines, breadth) {
  const words = lines.length * room.word;
  const letters = Math.max(...lines.map((line) => line.length)) * 8;
  if (foot - top < words + 8 || letters > breadth) return [];
  const middle = (foot + top) / 2;
  const line = foot - top < words + 50 ? [] : [stroke(['M', x, foot, 'V', middle + words / 2 + 4], ['M', x, top, 'V', middle - words / 2 - 4],
    ['M', x - tick, foot, 'H', x + tick], ['M', x - tick, top, 'H', x + tick])];
  return [...line, said(lines, x, middle + 7 - (lines.length - 1) * 12, 'middle')];
}
