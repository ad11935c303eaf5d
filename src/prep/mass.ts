/** Weights and loose volumes of what is torn out, and the sizes of the pound and the cubic yard. */

import { type Area, SQUARE_TICKS_PER_SQUARE_METRE } from '../units/length.ts';

/** 1 lb = 0.45359237 kg exactly (NIST SP 811 app. B.8, from memory). */
export const KILOGRAMS_PER_POUND = 0.45359237;
/** 1 yd³ = 0.9144³ m³ exactly: follows from the yard of 0.9144 m. */
export const LITRES_PER_CUBIC_YARD = 764.554857984;

/** Kilograms of a floor covering: area in square ticks × kilograms per square metre. */
export function kilogramsOf(area: Area, perSquareMetre: number): number {
  return (Number(area) / Number(SQUARE_TICKS_PER_SQUARE_METRE)) * perSquareMetre;
}

/** Litres that debris fills when thrown loosely: kilograms ÷ its bulk density in kilograms a litre (US EPA, 2016: volume = weight ÷ factor). */
export function looseLitres(kilograms: number, perLitre: number): number {
  return kilograms / perLitre;
}
