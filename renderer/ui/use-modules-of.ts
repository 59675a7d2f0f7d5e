import { useEffect, useState } from 'react';
import type { ModulesOf } from '@latchwork/core/exports/drawing/code-modules';
import type { Drawing } from '@latchwork/core/exports/drawing/drawing';
import { modulesBy } from '@latchwork/core/exports/drawing/modules-by';

let loaded: ModulesOf | undefined;

/** The encoder of bar codes and QR codes, fetched when a drawing needs it; undefined until it is there. */
export function useModulesOf(drawing: Drawing): ModulesOf | undefined {
  const [modulesOf, set] = useState(() => loaded);
  const needed = modulesOf === undefined && drawing.items.some((item) => item.kind === 'code');
  useEffect(() => {
    if (!needed) return;
    let gone = false;
    void import('bwip-js/generic').then(({ default: bwip }) => {
      loaded ??= modulesBy((name, text) => bwip.raw(name, text, {}));
      if (!gone) set(() => loaded);
    });
    return () => {
      gone = true;
    };
  }, [needed]);
  return modulesOf;
}
