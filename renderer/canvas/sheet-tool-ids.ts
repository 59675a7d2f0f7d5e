import type { ToolId } from '@latchwork/core/tools/step-tool';

/** The tools of each sheet, in the order in which they are offered. */
export const DIAGRAM_TOOLS: readonly ToolId[] = [
  'select',
  'hand',
  'wire',
  'splice',
  'board',
  'panel',
  'device',
];
export const FORMBOARD_TOOLS: readonly ToolId[] = [
  'select',
  'hand',
  'node',
  'segment',
  'dimension',
  'baseline',
  'path',
];
