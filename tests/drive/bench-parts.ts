import { tiny } from '@latchwork/core/model/tiny';
import type { Project } from '@latchwork/core/model/project';

/**
 * Two free housings, nothing drawn yet: X1 for sockets on the left, X2 for pins on the right, well apart. Catalogue parts
 * stand in the project.
 */
export const twoConnectors = (): Project =>
  tiny((t) => {
    t.project.wires = [];
    t.project.contacts = [];
    t.project.mates = [];
    t.project.equipment = [];
    t.project.connectors = t.project.connectors.filter((c) => ['X1', 'X2'].includes(c.designator));
    for (const c of t.project.connectors) c.cavities = [];
    t.connector('X1').position = { x: 0, y: 0 };
    t.connector('X2').position = { x: 120, y: 20 };
    t.connector('X2').exit = 'left';
  });
