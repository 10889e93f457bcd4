// A plan as a drawing, out of the outline in the answer: every sum is done there, and
// here it is scaled to the canvas. Strokes and fills have classes, and so the colours
// of whatever page they stand on. What a drawing shows is said below it in words.

import { compared, inWords } from './bars.js';
import { canvas, margin, said, wide } from './canvas.js';
import { drawn, el } from './element.js';
import { isMarks, isWish, nested, pieces, plan, ranged, side, top, turns, wedge, widthOf } from './plan.js';
import { sized } from './units.js';

const signs = { OUTLINE_UNIT_CM: 'cm', OUTLINE_UNIT_STITCHES: 'stitches', OUTLINE_UNIT_ROWS: 'rows', OUTLINE_UNIT_PERCENT: '%',
  OUTLINE_UNIT_METRES: 'm' };

// More places than this are not listed.
const mostListed = 24;

function along(axis, unit) {
  const sign = signs[axis.unit] ?? '';
  const length = sign === 'cm' || sign === 'm';
  return `${axis.measure}, ${sized(axis.least, length ? sign : '', unit)} to ${sized(axis.greatest, sign, unit)}`;
}

// picture is a figure with a caption that says what is drawn.
export function picture(outline, unit, manner) {
  const lines = outline.lines.filter((line) => line.points.length);
  if (!lines.length) return null;
  const [art, caption] = shown(lines, outline, unit, manner);
  art.setAttribute('role', 'img');
  art.setAttribute('aria-label', `Drawing. ${caption}`);
  return el('figure', { class: 'picture', part: 'picture' }, art, el('figcaption', {}, caption));
}

// shown is the drawing that suits an outline, and what it shows in words.
function shown(lines, outline, unit, manner) {
  const { x, y } = outline;
  const across = (v) => sized(v, signs[x.unit] ?? '', unit);
  const up = (v) => sized(v, signs[y.unit] ?? '', unit);
  const names = new Set(lines.map((line) => line.name));
  const knit = lines.filter((line) => !isWish(line));
  const wishes = lines.filter(isWish);
  const all = pieces(knit);
  const size = `${across(x.greatest - x.least)} across and ${up(y.greatest - y.least)} high`;
  const dashed = wishes.length ? ' Dashed: what was wanted.' : '';
  if (y.unit === 'OUTLINE_UNIT_PLACES') return [compared(lines, outline), `${inWords(lines, (p) => across(p.x))}.`];
  if (manner === 'round') return fromAbove(lines, across);
  if (manner === 'top') {
    return [top(lines, outline), `${capital(lines[0].name)}; dashed, the neck of the ${lines.slice(1).map((l) => l.name).join(', ')}. ${capital(size)}.`];
  }
  if (lines.every((line) => line.points.every((point) => point.y === line.points[0].y))) return strip(lines, outline, across);
  if (manner === 'nested' && all.length) {
    const names = all.map((piece) => piece.name.replace(/^size /, ''));
    return [nested(all, outline), `The edges of ${all.length > 1 ? `sizes ${names.join(', ')}, one in another` : `size ${names[0]}`}. ${capital(size)}.`];
  }
  if (all.length) {
    const wideAt = (piece) => {
      const [foot, head] = [0, -1].map((i) => across(widthOf(piece, i)));
      return foot === head ? `${foot} wide` : `${foot} wide below and ${head} above`;
    };
    const what = all.map((piece) => `${all.length > 1 ? `${piece.name}, ` : ''}${wideAt(piece)}`);
    return [side(all, wishes, outline, across), `${capital(what.join('; '))}. ${up(y.greatest - y.least)} high.${dashed}`];
  }
  const edge = lines.find((line) => line.name === 'top edge');
  if (edge) return [wedge(lines, outline), `${marked(turns(edge), 'turning points', x.measure)}. ${capital(size)}.${dashed}`];
  if (['low', 'likely', 'high'].every((name) => names.has(name))) {
    return [ranged(lines, outline), `Likely, with the least and the most dashed. Across: ${along(x, unit)}. Up: ${along(y, unit)}.`];
  }
  return [plan(lines, outline), `${counted(lines)}${capital(size)}.${dashed}${limbs(lines)}`];
}

const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);

const several = (n, names) => `${n} ${n === 1 ? names.replace(/s$/, '') : names}`;

// marked says how many marks there are, and where the few are.
function marked(points, names, measure = '') {
  if (points.length > mostListed || !points.length) return several(points.length, names);
  return `${several(points.length, names)}, at ${points.map((p) => sized(p.x, '', 'cm')).join(', ')}${measure ? ` ${measure}` : ''}`;
}

// counted says how many marks there are, and how many lines of one name.
function counted(lines) {
  const names = lines.map((line) => line.name);
  const often = [...new Set(names)].map((name) => [name, names.filter((other) => other === name).length]).filter(([, n]) => n > 1);
  const marks = lines.filter(isMarks).map((line) => `${line.points.length} ${line.name}, each where it lies. `);
  return often.map(([name, n]) => (/^line of /.test(name) ? `${capital(name.slice(8))} along ${n} lines. ` : `${n} × ${name}. `)).concat(marks).join('');
}

// limbs says which of them one sees, and which lie behind.
function limbs(lines) {
  const [before, behind] = [/^limb \d+$/, /^limb \d+, behind$/].map((name) =>
    lines.filter((line) => name.test(line.name)).map((line) => line.name.replace(/\D/g, '')).join(', '));
  return (before ? ` Limbs in front: ${before}.` : '') + (behind ? ` Limbs behind, dashed: ${behind}.` : '');
}

// strip draws places along a row or an edge: the row as a band, the places as marks.
function strip(lines, outline, across) {
  const height = 74;
  const span = outline.x.greatest - outline.x.least || 1;
  const left = (v) => margin.left + ((v - outline.x.least) / span) * (wide - margin.left - margin.right);
  const places = lines.filter((line) => line.points.length !== 2 || line.points[0].y !== 0);
  const points = places.flatMap((line) => line.points);
  const r = Math.max(1.6, Math.min(6, 170 / (points.length || 1))).toFixed(1);
  const marks = points.map((p) => drawn('circle', { cx: left(p.x).toFixed(1), cy: 20, r, class: 'mark' }));
  const stems = (points.length <= 80 ? points : []).map((p) =>
    drawn('line', { x1: left(p.x).toFixed(1), x2: left(p.x).toFixed(1), y1: 20, y2: 40, class: 'stem' }));
  const count = outline.x.unit === 'OUTLINE_UNIT_STITCHES' && span <= 200 ? span : 0;
  const stitches = Array.from({ length: Math.max(0, count - 1) }, (_, i) => {
    const x = left(outline.x.least + i + 1).toFixed(1);
    return drawn('line', { x1: x, x2: x, y1: 40, y2: 60, class: 'between' });
  });
  const band = drawn('rect', { x: margin.left, y: 40, width: wide - margin.left - margin.right, height: 20, class: 'fabric' });
  const what = places.map((line) => marked(line.points, line.name)).join('; ');
  return [canvas(height, band, ...stitches, ...stems, ...marks), `${what}; ${outline.x.measure}, ${across(outline.x.greatest)} in all.`];
}

// fromAbove draws circumferences as circles around one middle.
function fromAbove(lines, across) {
  const rounds = [...new Set(lines.flatMap((line) => line.points.map((p) => p.x)))].sort((a, b) => b - a);
  const size = 300;
  const middle = wide / 2;
  const radius = (x) => (x / rounds[0]) * (size / 2 - 6);
  const circles = rounds.map((x, i) => drawn('circle', { cx: middle, cy: size / 2, r: radius(x).toFixed(1),
    class: i === 0 ? 'fabric line' : i === rounds.length - 1 ? 'opening line' : 'ring' }));
  const inside = radius(rounds.at(-1)) > 45 ? said(across(rounds.at(-1)), middle, size / 2 + 6, 'middle') : null;
  const ends = [said(across(rounds[0]), middle + radius(rounds[0]) + 8, size / 2 + 6), inside];
  const between = rounds.length - 2;
  const changes = between > 0 ? `, and ${several(between, 'circles')} between, where the circumference changes` : '';
  return [canvas(size, ...circles, ...ends),
    `Seen from above: ${across(rounds[0])} around outside, ${across(rounds.at(-1))} inside${changes}.`];
}
