import { GENERAL_LIMITS } from './limit-sets/general';
import type { Id } from './ids';
import { PROJECT_FORMAT, PROJECT_FORMAT_VERSION, type Project } from './project';

/** An empty project. Ids are passed in, core makes none. */
export function newProject(args: { id: Id; revisionId: Id; title?: string; creator?: string }): Project {
  return {
    format: PROJECT_FORMAT,
    formatVersion: PROJECT_FORMAT_VERSION,
    id: args.id,
    titleBlock: {
      title: args.title ?? 'Untitled harness',
      identificationNumber: '',
      legalOwner: '',
      creator: args.creator ?? '',
    },
    notes: [],
    regulated: false,
    revisions: [
      {
        id: args.revisionId,
        revision: 'A',
        author: args.creator ?? '',
        description: 'First issue',
        status: 'draft',
      },
    ],
    limitSet: GENERAL_LIMITS,
    buildQuantities: [1],
    parts: [],
    equipment: [],
    signals: [],
    connectors: [],
    contacts: [],
    cables: [],
    wires: [],
    groups: [],
    splices: [],
    mates: [],
    fuses: [],
    nodes: [],
    segments: [],
    coverings: [],
    ties: [],
    fixings: [],
    labels: [],
    dimensions: [],
    decisions: [],
  };
}
