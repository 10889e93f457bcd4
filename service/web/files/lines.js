// Lines of an outline as strokes and fabric, and what their names tell of them.

import { pathOf } from './canvas.js';
import { drawn } from './element.js';

// More corners than this would be a thick line.
const mostCorners = 60;

// isWish tells a line that the fabric only comes near to: what was wanted.
export const isWish = (line) => /\bwanted\b|^shape\b|\bcurve$/.test(line.name);
// Lines that are marks alone, and what lies behind the rest.
export const isMarks = (line) => /^(increases|decreases)$/.test(line.name);
export const isHidden = (line) => /\bbehind$/.test(line.name);

// spanOf is from where to where points lie, across or up.
export function spanOf(points, axis) {
  const all = points.map((p) => p[axis]);
  return [Math.min(...all), Math.max(...all)];
}

export function stroke(line, at, manner = 'line') {
  return drawn('path', { d: pathOf(line.points.map(at)), class: manner }, drawn('title', {}, line.name));
}

export function fabric(points, rule) {
  return drawn('path', { d: `${points}Z`, class: 'fabric', 'fill-rule': rule });
}

export function dots(points, kind, r = 2.4) {
  return points.map(([cx, cy]) => drawn('circle', { cx: cx.toFixed(1), cy: cy.toFixed(1), r, class: kind }));
}

// corners are dots where few lines change their way.
export function corners(lines, at) {
  const few = lines.filter((line) => line.points.length > 2 && line.points.length <= mostCorners);
  return dots(few.flatMap((line) => line.points.map(at)), 'corner');
}
