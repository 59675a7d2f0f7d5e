import bwip from 'bwip-js/generic';
import { modulesBy } from '@latchwork/core/exports/drawing/modules-by';

/** Code 128 and QR for files. */
export const modulesOf = modulesBy((name, text) => bwip.raw(name, text, {}));
