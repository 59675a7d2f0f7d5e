import { z } from 'zod';

/** What the program remembers about its user, outside every project. */
export const Settings = z.strictObject({
  theme: z.enum(['system', 'light', 'dark']),
  lengthUnit: z.enum(['mm', 'inch']),
  wireSizeUnit: z.enum(['awg', 'mm2']),
  /** Panel name to its size in pixels; 0 is put away. */
  panelSizesPx: z.record(z.string(), z.number().nonnegative()),
});
export type Settings = z.infer<typeof Settings>;

export const defaultSettings: Settings = {
  theme: 'system',
  lengthUnit: 'mm',
  wireSizeUnit: 'awg',
  panelSizesPx: {},
};
