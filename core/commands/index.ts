import { branchInsert } from './branch-insert';
import { branchMirror } from './branch-mirror';
import { branchRotate } from './branch-rotate';
import { cableAdd } from './cable-add';
import { cavitySetSignal } from './cavity-set-signal';
import { cavitySetState } from './cavity-set-state';
import { connectorAddAccessory } from './connector-add-accessory';
import { connectorEdit } from './connector-edit';
import { connectorFitLock } from './connector-fit-lock';
import { connectorPlace } from './connector-place';
import { connectorRemoveAccessory } from './connector-remove-accessory';
import { connectorSetPart } from './connector-set-part';
import { connectorTurn } from './connector-turn';
import { contactFit } from './contact-fit';
import { contactSet } from './contact-set';
import { contactShare } from './contact-share';
import { coveringAdd } from './covering-add';
import { coveringEdit } from './covering-edit';
import { decisionAdd } from './decision-add';
import { decisionAddSeveral } from './decision-add-several';
import { decisionClose } from './decision-close';
import { decisionUse } from './decision-use';
import { dimensionAdd } from './dimension-add';
import { dimensionEdit } from './dimension-edit';
import { equipmentAdd } from './equipment-add';
import { equipmentEdit } from './equipment-edit';
import { fixingAdd } from './fixing-add';
import { fixingEdit } from './fixing-edit';
import { formboardLayOut } from './formboard-lay-out';
import { fuseAdd } from './fuse-add';
import { groupAdd } from './group-add';
import { groupEdit } from './group-edit';
import { labelAdd } from './label-add';
import { labelEdit } from './label-edit';
import { labelsMake } from './labels-make';
import { mateAdd } from './mate-add';
import { mateSetMap } from './mate-set-map';
import { nodeAdd } from './node-add';
import { nodeEdit } from './node-edit';
import { nodesMove } from './nodes-move';
import { objectsAlign } from './objects-align';
import { objectsMove } from './objects-move';
import { objectsPaste } from './objects-paste';
import { objectsRemove } from './objects-remove';
import { partAdd } from './part-add';
import { partEditOffers } from './part-edit-offers';
import { partEmbed } from './part-embed';
import { partExchange } from './part-exchange';
import { projectAddRevision } from './project-add-revision';
import { projectEdit } from './project-edit';
import { projectEditPurchasing } from './project-edit-purchasing';
import { projectEditTitleBlock } from './project-edit-title-block';
import { projectRelease } from './project-release';
import { projectSetLimit } from './project-set-limit';
import { projectTake } from './project-take';
import { projectUseLimitSet } from './project-use-limit-set';
import { segmentAdd } from './segment-add';
import { segmentEdit } from './segment-edit';
import { segmentJoin } from './segment-join';
import { segmentSplit } from './segment-split';
import { signalAdd } from './signal-add';
import { signalEdit } from './signal-edit';
import { spliceAdd } from './splice-add';
import { spliceEdit } from './splice-edit';
import { splicePlaceOnSegment } from './splice-place-on-segment';
import { tieAdd } from './tie-add';
import { tieEdit } from './tie-edit';
import { trunkStraighten } from './trunk-straighten';
import { wireAdd } from './wire-add';
import { wireEdit } from './wire-edit';
import { wireMoveEnd } from './wire-move-end';
import { wirePinPath } from './wire-pin-path';
import { wireSetPart } from './wire-set-part';
import { wireSetStripLength } from './wire-set-strip-length';
import { wireUnpinPath } from './wire-unpin-path';

/** Everything a user can do to a project. */
export const COMMANDS = [
  branchInsert,
  branchMirror,
  branchRotate,
  cableAdd,
  cavitySetSignal,
  cavitySetState,
  connectorAddAccessory,
  connectorEdit,
  connectorFitLock,
  connectorPlace,
  connectorRemoveAccessory,
  connectorSetPart,
  connectorTurn,
  contactFit,
  contactSet,
  contactShare,
  coveringAdd,
  coveringEdit,
  decisionAdd,
  decisionAddSeveral,
  decisionClose,
  decisionUse,
  dimensionAdd,
  dimensionEdit,
  equipmentAdd,
  equipmentEdit,
  fixingAdd,
  fixingEdit,
  formboardLayOut,
  fuseAdd,
  groupAdd,
  groupEdit,
  labelAdd,
  labelEdit,
  labelsMake,
  mateAdd,
  mateSetMap,
  nodeAdd,
  nodeEdit,
  nodesMove,
  objectsAlign,
  objectsMove,
  objectsPaste,
  objectsRemove,
  partAdd,
  partEditOffers,
  partEmbed,
  partExchange,
  projectAddRevision,
  projectEdit,
  projectEditPurchasing,
  projectEditTitleBlock,
  projectRelease,
  projectSetLimit,
  projectTake,
  projectUseLimitSet,
  segmentAdd,
  segmentEdit,
  segmentJoin,
  segmentSplit,
  signalAdd,
  signalEdit,
  spliceAdd,
  spliceEdit,
  splicePlaceOnSegment,
  tieAdd,
  tieEdit,
  trunkStraighten,
  wireAdd,
  wireEdit,
  wireMoveEnd,
  wirePinPath,
  wireSetPart,
  wireSetStripLength,
  wireUnpinPath,
] as const;
