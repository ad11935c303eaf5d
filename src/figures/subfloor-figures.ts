/** Figures for panel subfloors: patches, squeaks, adhesive, joists, flatness and leveling compound. */

import type { DeepestDip, DipShape } from '../prep/flat-and-dry.ts';
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

export const PANEL_SHEET: Cited<{ readonly width: Length; readonly length: Length }> = {
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

const CUT_OUT: Cited<string> = {
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
  name: 'Thickness of a subfloor panel, if not given',
  said: '3/4 in; measure at a vent or a cut',
  value: inches(0.75),
  source: COMMON_PRACTICE,
};

export const SCREW_PACK: Cited<number> = {
  name: 'Screws in a pack, if not given',
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
  name: 'Way the joists run, if not given',
  said: 'along the short side of a noisy section, up the plan of a patch; look at the rows of nails',
  value: 'short',
  source: COMMON_PRACTICE,
};

export const LARGEST_PATCH: Cited<Length> = {
  name: 'Largest patch worked out',
  said: '12 ft each way; beyond that the whole floor is replaced',
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

/** Bays a sheet must span so that each of its panels can span two. */
export const SHEET_BAYS: Cited<number> = {
  name: 'Sheet that a patch can be cut from',
  said: 'reaches over three bays, so that no panel of it has fewer than two',
  value: 3,
  source: TRADE_CUSTOM,
};

/** Figures for patches and squeaks, in the order they are used. */
export const PATCH_FIGURES = [
  PATCH_BAYS,
  CUT_OUT,
  PATCH_MARGIN,
  LEAST_PANEL_WIDTH,
  PANEL_GAP,
  PANEL_SHEET,
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

// Subfloor adhesive.

export const BEAD: Cited<Length> = {
  name: 'Bead of subfloor adhesive',
  said: '3/8 in on each joist, two beads where panels butt',
  value: inches(0.375),
  source: {
    title: 'Modern Carpentry',
    publisher: 'Goodheart-Willcox',
    year: 2016,
    section: 'p. 258',
    standing: 'published',
  },
};

/** US fluid ounces; the size of the user's own tube takes precedence. */
export const TUBE: Cited<number> = {
  name: 'Tube of subfloor adhesive',
  said: '28 fl oz',
  value: 28,
  source: COMMON_PRACTICE,
};

export const BEAD_WASTE: Cited<number> = {
  name: 'Adhesive used against the bead in theory',
  said: 'about 1.5 times',
  value: 1.5,
  source: { title: 'Fine Homebuilding no. 146', standing: 'reported' },
};

/** 231 in³ per gallon of 128 fl oz. */
export const CUBIC_INCHES_PER_FLUID_OUNCE: Cited<number> = {
  name: 'US fluid ounce',
  said: '231/128 in³',
  value: 231 / 128,
  source: { title: 'Handbook 44, appendix C', publisher: 'NIST', standing: 'published' },
};

export const ADHESIVE_FIGURES = [BEAD, TUBE, BEAD_WASTE, CUBIC_INCHES_PER_FLUID_OUNCE] as const;

// Floor joists: what may be cut out before it takes a licensed professional.

const CODE: Source = {
  title: 'International Residential Code, R502.8.1',
  publisher: 'ICC',
  standing: 'reported',
};

/** Each as a divisor of the joist's depth; distances of a hole as lengths. */
export const JOIST_LIMITS: Cited<{
  readonly notch: number;
  readonly notchLength: number;
  readonly endNotch: number;
  readonly hole: number;
  readonly holeEdge: Length;
  readonly holeApart: Length;
}> = {
  name: 'Notches and holes in a solid-sawn floor joist of depth D',
  said: 'notch D/6 deep and D/3 long, none in the middle third, D/4 at an end; hole D/3, 2 in from the edges and from any other hole or notch',
  value: { notch: 6, notchLength: 3, endNotch: 4, hole: 3, holeEdge: inches(2), holeApart: inches(2) },
  source: CODE,
};

export const ENGINEERED_JOIST: Cited<string> = {
  name: 'Cuts, notches and holes in I-joists, trusses and glued members',
  said: 'none, but as the maker or a registered design professional allows them',
  value: 'never by rule',
  source: { title: 'International Residential Code, R502.8.2', publisher: 'ICC', standing: 'reported' },
};

export const JOIST_DEPTH: Cited<Length> = {
  name: 'Depth of a joist, if not given',
  said: '5 1/2 in, the shallowest that is met: its limits are the strictest',
  value: inches(5.5),
  source: CAUTIOUS_DEFAULT,
};

export const JOIST_WIDTH: Cited<Length> = {
  name: 'Width of a joist of 2-by lumber',
  said: '1 1/2 in',
  value: inches(1.5),
  source: COMMON_PRACTICE,
};

export const JOIST_SPACING: Cited<Length> = {
  name: 'Joists, center to center',
  said: '16 in; 12, 19.2 and 24 in are met too',
  value: inches(16),
  source: COMMON_PRACTICE,
};

export const JOIST_FIGURES = [JOIST_SPACING, JOIST_WIDTH, JOIST_DEPTH, JOIST_LIMITS, ENGINEERED_JOIST] as const;

// Flatness, and leveling compound.

interface FlatnessLimit {
  readonly gap: Length;
  readonly over: Length;
}

const FLOATING: Source = {
  title: 'F710 and trade guidance for floating floors',
  publisher: 'ASTM',
  standing: 'reported',
};

const inch = (gap: number, over: number): FlatnessLimit => ({ gap: inches(gap), over: feet(over) });
const metric = (gap: number, over: number): FlatnessLimit => ({
  gap: millimetres(gap),
  over: millimetres(over * 1000),
});

export const FLOATING_FLATNESS: Cited<readonly FlatnessLimit[]> = {
  name: 'Flat enough for a floating floor',
  said: '3/16 in in 10 ft, or 1/8 in in 6 ft',
  value: [inch(3 / 16, 10), inch(1 / 8, 6)],
  source: FLOATING,
};

export const FLOATING_FLATNESS_METRIC: Cited<readonly FlatnessLimit[]> = {
  name: 'Flat enough for a floating floor, in metric',
  said: '5 mm in 3 m, or 3 mm in 2 m',
  value: [metric(5, 3), metric(3, 2)],
  source: FLOATING,
};

const NAILED: Source = {
  title: 'Hardwood Floors, February 2018',
  publisher: 'NWFA',
  year: 2018,
  standing: 'published',
};

export const NAILED_FLATNESS: Cited<readonly FlatnessLimit[]> = {
  name: 'Flat enough for nailed-down wood',
  said: '1/4 in in 10 ft, or 3/16 in in 6 ft',
  value: [inch(1 / 4, 10), inch(3 / 16, 6)],
  source: NAILED,
};

export const NAILED_FLATNESS_METRIC: Cited<readonly FlatnessLimit[]> = {
  name: 'Flat enough for nailed-down wood, in metric',
  said: '6 mm in 3 m, or 5 mm in 2 m: the inch rule in round millimeters',
  value: [metric(6, 3), metric(5, 2)],
  source: { ...NAILED, standing: 'reported' },
};

/** Cubic feet a bag fills, and its weight in pounds. */
export const LEVELLER_YIELD: Cited<{ readonly cubicFeet: number; readonly pounds: number }> = {
  name: 'A bag of leveling compound fills',
  said: '0.45 cu ft per 50 lb; bags differ, 0.42 to 0.52: take the bag’s own figure',
  value: { cubicFeet: 0.45, pounds: 50 },
  source: { title: 'Makers’ coverage tables for leveling compound', standing: 'reported' },
};

const FILL_VOLUME: Cited<string> = {
  name: 'Leveling compound',
  said: 'area × mean depth; a feathered ramp ½ × area × height',
  value: 'area × mean depth',
  source: { title: 'Trade guidance for leveling', standing: 'reported' },
};

/** Fraction of area × deepest gap: a parabolic section, and a paraboloid bowl. */
export const DIP_FILL: Cited<Readonly<Record<DipShape, number>>> = {
  name: 'What a dip holds of its area × its deepest gap',
  said: 'a round dish 1/2, a long trough 2/3, a dip as deep all over 1',
  value: { dish: 1 / 2, trough: 2 / 3, even: 1 },
  source: { title: 'Geometry: areas and volumes under a parabola', standing: 'common practice' },
};

/** Pounds per square foot and inch of depth, wet; plans use the heavy end. */
export const LEVELLER_WEIGHT: Cited<{ readonly light: number; readonly heavy: number }> = {
  name: 'What leveling compound weighs as it is poured',
  said: '12–14 lb a sq ft for each inch of depth; figured with 14',
  value: { light: 12, heavy: 14 },
  source: { title: 'Trade guidance for leveling', standing: 'reported' },
};

export const DEEPEST_DIP: Cited<DeepestDip> = {
  name: 'Dip in a wood floor that is a question about its structure first',
  said: 'deeper than 3/4 in (19 mm) under any straightedge up to 10 ft (3 m), longer ones in proportion',
  value: { gap: inches(3 / 4), over: feet(10) },
  source: CAUTIOUS_DEFAULT,
};

/** Pounds per square foot over the area of the dip itself. */
export const HEAVIEST_FILL: Cited<number> = {
  name: 'Leveling compound on a wood floor that is a question about its structure first',
  said: 'over 5 lb a sq ft (24 kg/m²) of the dip’s own area',
  value: 5,
  source: CAUTIOUS_DEFAULT,
};

export const POUR_DEPTH: Cited<Length> = {
  name: 'Deepest pour of leveling compound at once',
  said: '1 in; the bag’s own figure wins',
  value: inches(1),
  source: TRADE_CUSTOM,
};

export const LEVELLER_DRIES: Cited<number> = {
  name: 'Leveling compound dries, if not given',
  said: '24 h; the bag’s own figure wins',
  value: 24,
  source: TRADE_CUSTOM,
};

export const LEVEL_TAKEN: Cited<string> = {
  name: 'Floor and line of flatness readings, if not given',
  said: 'a wood floor, for it carries the least, and depths below a straightedge',
  value: 'wood',
  source: CAUTIOUS_DEFAULT,
};

export const FLATNESS_FIGURES = [
  FLOATING_FLATNESS,
  FLOATING_FLATNESS_METRIC,
  NAILED_FLATNESS,
  NAILED_FLATNESS_METRIC,
  FILL_VOLUME,
  DIP_FILL,
  LEVELLER_YIELD,
  LEVELLER_WEIGHT,
  DEEPEST_DIP,
  HEAVIEST_FILL,
  POUR_DEPTH,
  LEVELLER_DRIES,
  LEVEL_TAKEN,
] as const;
