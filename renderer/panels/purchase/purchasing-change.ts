import type { Call } from '@latchwork/core/commands/dispatch';

/** What `project.edit-purchasing` may be told. */
export type CallArgs = Extract<Call, { id: 'project.edit-purchasing' }>['args']['change'];
