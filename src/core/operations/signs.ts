/**
 * The safety signs that may stand at a step, by their ISO 7010 registration, with what each means. Only these: codes
 * outside this list were not seen in two sources that agree.
 */
export const SIGNS = {
  W001: 'general warning',
  W007: 'obstacle on the floor',
  W008: 'drop',
  W011: 'slippery',
  W012: 'electricity',
  W015: 'overhead load',
  W017: 'hot surface',
  W019: 'crushing',
  W021: 'flammable',
  W022: 'sharp',
  W024: 'crushing of hands',
  W029: 'pressurised cylinder',
  W035: 'falling objects',
  W041: 'asphyxiating atmosphere',
  W088: 'moving blades',
  M001: 'general mandatory',
  M002: 'read the manual',
  M003: 'ear protection',
  M004: 'eye protection',
  M006: 'unplug',
  M008: 'safety footwear',
  M009: 'gloves',
  M014: 'head protection',
  M016: 'mask',
  M017: 'respirator',
  M021: 'disconnect before work',
  M031: 'table-saw guard',
  P001: 'general prohibition',
  P003: 'no flame',
  P009: 'no climbing',
  P010: 'do not touch',
  P012: 'no heavy load',
  P019: 'do not step on',
  P031: 'do not alter the switch',
  E003: 'first aid',
  F001: 'extinguisher',
} as const

export type Sign = keyof typeof SIGNS
