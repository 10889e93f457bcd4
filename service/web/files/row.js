// Places along a row or an edge: the row as a band, the places as marks.

import { canvas, margin, said, wide } from './canvas.js';
import { drawn } from './element.js';

// More places than this have no room for their numbers.
const mostNumbered = 10;

// placesOf are the lines of marks, and not that of the row.
export const placesOf = (lines) => lines.filter((line) => line.points.length !== 2 || line.points[0].y !== 0);

export function strip(lines, outline) {
  const span = outline.x.greatest - outline.x.least || 1;
  const left = (v) => margin.left + ((v - outline.x.least) / span) * (wide - margin.left - margin.right);
  const points = placesOf(lines).flatMap((line) => line.points);
  const r = Math.max(1.6, Math.min(6, 170 / (points.length || 1))).toFixed(1);
  const marks = points.map((p) => drawn('circle', { cx: left(p.x).toFixed(1), cy: 20, r, class: 'mark' }));
  const stems = (points.length <= 80 ? points : []).map((p) =>
    drawn('line', { x1: left(p.x).toFixed(1), x2: left(p.x).toFixed(1), y1: 20, y2: 40, class: 'stem' }));
  const inStitches = outline.x.unit === 'OUTLINE_UNIT_STITCHES';
  const count = inStitches && span <= 200 ? span : 0;
  const stitches = Array.from({ length: Math.max(0, count - 1) }, (_, i) => {
    const x = left(outline.x.least + i + 1).toFixed(1);
    return drawn('line', { x1: x, x2: x, y1: 40, y2: 60, class: 'between' });
  });
  const numbers = inStitches && points.length <= mostNumbered ? points.map((p) => said(String(p.x), left(p.x), 84, 'middle')) : [];
  const band = drawn('rect', { x: margin.left, y: 40, width: wide - margin.left - margin.right, height: 20, class: 'fabric' });
  return canvas(numbers.length ? 94 : 74, band, ...stitches, ...stems, ...marks, ...numbers);
}
