import type { DemoBuilder } from '../builder';

/** Parts with an alternate each: the loose contact for the one on a strip, the longer tie for the shorter. */
const ALTERNATES = [
  ['BI2-S2630-01', 'BI2-S2630-02'],
  ['OY-100', 'OY-150'],
] as const;

/** Hand tools beside the applicators: for few harnesses loose contacts are cheaper, for many a reel is. */
const HAND_TOOLS = ['AL3-HT-2024', 'BI2-HT-2630'];

/** What a buyer needs beside the offers of the catalogue. */
export function preparePurchase(demo: DemoBuilder): void {
  for (const tool of HAND_TOOLS) demo.tool(tool);
  for (const [number, alternate] of ALTERNATES) {
    const part = demo.project.parts.find((p) => p.partNumber === number);
    if (!part) throw new Error(`The weather station has no ${number}`);
    demo.do({ id: 'part.add', args: { partNumber: alternate } });
    demo.do({ id: 'part.embed', args: { part: { ...part, alternates: [alternate] } } });
  }
  demo.do({ id: 'project.edit-purchasing', args: { change: { currency: 'EUR' } } });
}
