/** Countries whose years for old materials are told apart; `elsewhere` is any other. */

export type Country = 'us' | 'canada' | 'uk' | 'australia' | 'elsewhere';

/** The country that counts: the one told, else by the units of the sizes, for nobody measures floors of the US in meters. */
export function countryFor(told: Country | undefined, metric: boolean): Country {
  return told ?? (metric ? 'elsewhere' : 'us');
}
