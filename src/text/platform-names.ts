/** The one list of platforms, and what each is called in a sentence. */

const LABELS = { terminal: 'the terminal', discord: 'Discord', slack: 'Slack', web: 'web' } as const;

export type PlatformName = keyof typeof LABELS;

export const PLATFORM_NAMES = Object.keys(LABELS) as readonly PlatformName[];

const CALLED: ReadonlyMap<string, string> = new Map(Object.entries(LABELS));

export function accountName(platform: string): string {
  return CALLED.get(platform) ?? platform;
}
