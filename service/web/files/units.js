// Lengths as they are typed and shown. What is kept, asked and answered is always
// centimetres; inches are a way of writing them.

const inch = 2.54;
const yard = 0.9144;

// fourInches are over how much gauge is counted in inches, in cm.
export const fourInches = '10.16';

// places is how many decimals are shown. More are typed than anybody measures.
const places = { cm: 1, in: 2, m: 0, yd: 0, g: 0, '%': 1 };

const unreadable = 'cannot be read as a number; write it like 22, 22.5 or 22 1/2';

// readNumber reads what somebody typed: decimals with a point or a comma, and
// fractions, as inches have them.
export function readNumber(text) {
  const typed = text.trim().replace('−', '-').replace(/(\d),(\d{1,2}|\d{4,})$/, '$1.$2');
  const mixed = /^(-?)(?:(\d+)\s+)?(\d+)\/(\d+)$/.exec(typed);
  if (mixed && Number(mixed[4]) > 0) {
    const size = Number(mixed[2] ?? 0) + Number(mixed[3]) / Number(mixed[4]);
    return mixed[1] ? -size : size;
  }
  if (/^\d{1,3}(,\d{3})+$/.test(typed)) return { fault: 'has a comma; write thousands without one' };
  const plain = /^-?(\d+\.?\d*|\.\d+)(e-?\d+)?$/i.test(typed) ? Number(typed) : NaN;
  return Number.isFinite(plain) ? plain : { fault: unreadable };
}

// roughly is a length that is said by the way, in inches to the quarter.
export function roughly(cm, unit) {
  const quarters = Math.round((cm / inch) * 4) / 4;
  if (unit !== 'in' || quarters < 1) return sized(cm, 'cm', unit);
  return `${Math.abs(cm / inch - quarters) < 0.01 ? '' : 'about '}${quarters} in`;
}

// rounded takes off what binary fractions add.
function rounded(n, decimals) {
  return Number(n.toFixed(decimals));
}

// kept is a typed number in the unit that is asked.
export function kept(n, sign, unit) {
  return sign === 'cm' && unit === 'in' ? rounded(n * inch, 6) : n;
}

// typed is a kept number as the person would have typed it.
export function typed(text, sign, unit) {
  if (sign !== 'cm' || unit !== 'in' || text === '') return text;
  return text.split(/[\s,;]+/).map((part) => (Number.isFinite(Number(part)) ? String(rounded(Number(part) / inch, 4)) : part)).join(' ');
}

// signIn is the sign to stand beside a field.
export function signIn(sign, unit) {
  return sign === 'cm' && unit === 'in' ? 'in' : sign;
}

// sized writes a figure of an answer with its unit.
export function sized(n, sign, unit) {
  if (unit === 'in' && sign === 'cm') return `${rounded(n / inch, places.in)} in`;
  if (unit === 'in' && sign === 'm') return `${rounded(n / yard, places.yd)} yd`;
  if (unit === 'in' && sign === 'cm²') return `${rounded(n / inch / inch, 1)} sq in`;
  // A little is weighed finely, and of much nobody wants to know a part.
  const fine = sign === 'g' && Math.abs(n) < 10 ? 1 : places[sign] ?? 2;
  const exact = rounded(n, Math.abs(n) >= 1000 ? 0 : fine);
  const shown = Math.abs(exact) >= 10000 ? exact.toLocaleString('en') : String(exact);
  return !sign ? shown : sign === '°' ? `${shown}°` : `${shown} ${sign}`;
}
