/** Names alone, without schemas, so that the preload script stays tiny. The schemas are in contract.ts. */
export const channels = [
  'app:info',
  'project:initial',
  'project:list-demos',
  'project:new-from-demo',
  'project:recent',
  'project:list-folder',
  'project:open',
  'project:open-dialog',
  'project:save',
  'project:save-as',
  'project:on-disk',
  'file:export',
  'table:export',
  'catalogue:list',
  'catalogue:list-folder',
  'catalogue:import',
  'catalogue:import-dialog',
  'backup:write',
  'backup:list',
  'backup:open',
  'backup:discard',
  'settings:get',
  'settings:set',
  'shell:open-external',
] as const;

export type Channel = (typeof channels)[number];
