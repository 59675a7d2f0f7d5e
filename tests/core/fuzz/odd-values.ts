import { between } from '../../generate/harness/random';

type Random = () => number;
type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

const TEXTS = [
  '',
  ' ',
  '=1+1',
  '<b>&"\'',
  'Ω µ ²',
  '\u202eabc',
  'line\nbreak',
  '1',
  'X1',
  'a'.repeat(300),
  '🧵',
  ']]>',
  '\0',
];
const NUMBERS = [0, 1, -1, 0.1, 1e-9, 1e9, 1e300, Number.MAX_SAFE_INTEGER, 7, 1000];

/** A leaf of the value gets another value of its kind, or an optional field goes: odd, but often of the right shape. */
export function withOddValue(value: Json, random: Random): Json {
  const places: (readonly [{ [key: string]: Json } | Json[], string | number])[] = [];
  collect(value, places);
  const place = places[between(random, 0, places.length)];
  if (!place) return value;
  const [holder, key] = place as readonly [{ [key: string | number]: Json }, string | number];
  const was = holder[key];
  if (random() < 0.2 && !Array.isArray(holder)) delete holder[key];
  else if (typeof was === 'number')
    holder[key] =
      random() < 0.3 ? was * (random() - 0.2) * 10 : (NUMBERS[between(random, 0, NUMBERS.length)] as number);
  else if (typeof was === 'string') holder[key] = TEXTS[between(random, 0, TEXTS.length)] as string;
  else if (typeof was === 'boolean') holder[key] = !was;
  else if (Array.isArray(was))
    holder[key] = random() < 0.5 ? [] : was.slice(0, between(random, 0, was.length + 1));
  return value;
}

/** Every place but ids and what the format is known by: without these a project is only refused. */
function collect(
  value: Json,
  places: (readonly [{ [key: string]: Json } | Json[], string | number])[],
): void {
  if (typeof value !== 'object' || value === null) return;
  const entries = Array.isArray(value) ? value.map((v, i) => [i, v] as const) : Object.entries(value);
  for (const [key, inner] of entries) {
    const isId = typeof inner === 'string' && /^[0-9a-f]{8}-/.test(inner);
    if (!isId && !['format', 'formatVersion', 'kind', 'at', 'id'].includes(String(key)))
      places.push([value as { [key: string]: Json }, key]);
    collect(inner, places);
  }
}
