/** Figures for panel subfloors: fasteners, gaps, beads, sheets, patches and squeaks. */

import type { Source } from '../reply/reply.ts';
import { feet, inches, type Length, millimetres } from '../units/length.ts';
import { CAUTIOUS_DEFAULT, type Cited, COMMON_PRACTICE, TRADE_CUSTOM } from './cited.ts';

const CARPENTRY: Source = {
  title: 'Modern Carpentry',
  publisher: 'Goodheart-Willcox',
  year: 2016,
  section: 'p. 258',
  standing: 'published',
};

export const FASTENER_SPACING: Cited<{ readonly edge: Length; readonly field: Length }> = {
  name: 'Fasteners of a panel subfloor',
  said: '6 in apart along supported ends and edges, 12 in apart on joists between',
  value: { edge: inches(6), field: inches(12) },
  source: CARPENTRY,
};

export const FASTENER_BITE: Cited<Length> = {
  name: 'Fastener into the joist',
  said: 'at least 1 in',
  value: inches(1),
  source: CARPENTRY,
};

export const PANEL_GAP: Cited<Length> = {
  name: 'Gap between subfloor panels',
  said: '1/8 in at all ends and edges',
  value: inches(0.125),
  source: { title: 'E30V', publisher: 'APA', year: 2011, section: 'pp. 32, 37', standing: 'published' },
};

export const SHEET: Cited<{ readonly width: Length; readonly length: Length }> = {
  name: 'Sheet of subfloor panel',
  said: '4 x 8 ft, its strength axis along the 8 ft; whole sheets are bought',
  value: { width: inches(48), length: inches(96) },
  source: { ...CARPENTRY, section: 'p. 260' },
};

export const LEAST_PANEL_WIDTH: Cited<Length> = {
  name: 'Narrowest panel the span tables cover',
  said: '24 in along the joists',
  value: inches(24),
  source: {
    title: 'International Residential Code, Table R503.2.1.1(1), note c',
    publisher: 'ICC',
    standing: 'reported',
  },
};

export const PANEL_AT_24: Cited<{ readonly beyond: Length; readonly thickness: Length }> = {
  name: 'Panel over joists 24 in apart',
  said: '23/32 to 3/4 in thick',
  value: { beyond: inches(20), thickness: inches(23 / 32) },
  source: {
    title: 'International Residential Code, Table R503.2.1.1(1)',
    publisher: 'ICC',
    standing: 'reported',
  },
};

export const PATCH_BAYS: Cited<number> = {
  name: 'Patch of a panel subfloor',
  said: 'spans two bays (three joists), strength axis across the joists, every edge between joists blocked',
  value: 2,
  source: TRADE_CUSTOM,
};

export const PATCH_MARGIN: Cited<Length> = {
  name: 'Sound wood kept between the damage and the cut',
  said: '2 in',
  value: inches(2),
  source: COMMON_PRACTICE,
};

export const CUT_OUT: Cited<string> = {
  name: 'Cutting out a patch',
  said: 'two sides on joist centrelines, saw as deep as the panel is thick, larger rather than tiny',
  value: 'panel thickness',
  source: { title: 'Trade guidance for subfloor repairs', standing: 'reported' },
};

export const SQUEAK_SPACING: Cited<Length> = {
  name: 'Screws against a squeak',
  said: '6 in apart along the whole length of the noisy section, into the joist',
  value: inches(6),
  source: COMMON_PRACTICE,
};

export const PANEL_THICKNESS: Cited<Length> = {
  name: 'Thickness of a subfloor panel, untold',
  said: '3/4 in; measure at a vent or a cut',
  value: inches(0.75),
  source: COMMON_PRACTICE,
};

export const SCREW_PACK: Cited<number> = {
  name: 'Screws in a pack, untold',
  said: '100',
  value: 100,
  source: COMMON_PRACTICE,
};

export const SCREW_STEPS: Cited<{ readonly imperial: Length; readonly metric: Length }> = {
  name: 'Lengths that screws are sold in',
  said: 'steps of 1/4 in, or 5 mm',
  value: { imperial: inches(0.25), metric: millimetres(5) },
  source: COMMON_PRACTICE,
};

export const JOIST_RUN: Cited<string> = {
  name: 'Way the joists run, untold',
  said: 'along the short side of a noisy section, up the plan of a patch; look at the rows of nails',
  value: 'short',
  source: COMMON_PRACTICE,
};

export const LARGEST_PATCH: Cited<Length> = {
  name: 'Largest patch worked out',
  said: '12 ft each way; beyond, a floor is laid anew',
  value: feet(12),
  source: CAUTIOUS_DEFAULT,
};

export const PATCH_RIM: Cited<Length> = {
  name: 'Screw inside a panel’s rim',
  said: '3/8 in',
  value: inches(0.375),
  source: COMMON_PRACTICE,
};

export const PANEL_KERF: Cited<Length> = {
  name: 'Kerf of a saw in panels',
  said: '1/8 in',
  value: inches(0.125),
  source: COMMON_PRACTICE,
};

export const BLOCK_FACE: Cited<Length> = {
  name: 'Blocking under a patch',
  said: '2×4 laid flat, 3 1/2 in wide',
  value: inches(3.5),
  source: COMMON_PRACTICE,
};

export const BLOCK_SCREWS: Cited<number> = {
  name: 'Screws in a block',
  said: '4: two into each end',
  value: 4,
  source: COMMON_PRACTICE,
};

/** Bays that a sheet must reach over, so that its panels can be shared with two bays each. */
export const SHEET_BAYS: Cited<number> = {
  name: 'Sheet that a patch can be cut from',
  said: 'reaches over three bays, so that no panel of it has fewer than two',
  value: 3,
  source: TRADE_CUSTOM,
};

/** The figures of patches and squeaks, in the order in which they come up. */
export const PATCH_FIGURES = [
  PATCH_BAYS,
  CUT_OUT,
  PATCH_MARGIN,
  LEAST_PANEL_WIDTH,
  PANEL_GAP,
  SHEET,
  PANEL_AT_24,
  FASTENER_SPACING,
  LARGEST_PATCH,
  PATCH_RIM,
  PANEL_KERF,
  BLOCK_FACE,
  BLOCK_SCREWS,
  SHEET_BAYS,
] as const;

export const SQUEAK_FIGURES = [
  SQUEAK_SPACING,
  FASTENER_BITE,
  PANEL_THICKNESS,
  SCREW_PACK,
  SCREW_STEPS,
  JOIST_RUN,
] as const;
