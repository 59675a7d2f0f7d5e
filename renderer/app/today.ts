import { useSyncExternalStore } from 'react';

/** How often the day is looked at: a decision expires while the window stays open over midnight. */
const LOOK_MS = 30_000;

/** The calendar day where the user is, YYYY-MM-DD. */
export function today(now = new Date()): string {
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** The day as it goes by. */
export const useToday = (): string => useSyncExternalStore(subscribe, () => today());

function subscribe(changed: () => void): () => void {
  const timer = setInterval(changed, LOOK_MS);
  return () => clearInterval(timer);
}
