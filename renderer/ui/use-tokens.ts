import { useEffect, useState } from 'react';
import { onTokensChange, readTokens, type Tokens } from './tokens';

/** The tokens inside a component; a new object when the theme changes. */
export function useTokens(): Tokens {
  const [tokens, setTokens] = useState(() => readTokens());
  useEffect(() => onTokensChange(() => setTokens(readTokens())), []);
  return tokens;
}
