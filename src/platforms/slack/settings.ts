/** The settings of a Slack app, and what is missing for it to start. Read before anything of Slack is loaded. */

/** What whoever runs the bot has told of their Slack app; empty texts are not told. */
export interface SlackSettings {
  readonly botToken: string;
  readonly appToken: string;
  readonly signingSecret: string;
  readonly clientId: string;
  readonly clientSecret: string;
  readonly stateSecret: string;
  readonly key: string;
  /** Where Slack's API is; Slack's own without it. */
  readonly api?: string;
}

/** Whether anything of Slack was told. */
export function slackIsConfigured(settings: SlackSettings): boolean {
  const { botToken, appToken, signingSecret, clientId } = settings;
  return [botToken, appToken, signingSecret, clientId].some((given) => given !== '');
}

/** What is missing to start, each as a line; none when it can start. */
export function slackLacks(settings: SlackSettings): readonly string[] {
  const { botToken, appToken, signingSecret, clientId, clientSecret, stateSecret, key } = settings;
  const lacks: string[] = [];
  if (appToken === '' && signingSecret === '') {
    lacks.push('FLOORHAND_SLACK_APP_TOKEN (Socket Mode) or FLOORHAND_SLACK_SIGNING_SECRET (HTTP)');
  }
  if (botToken === '') {
    const oauth = { CLIENT_ID: clientId, CLIENT_SECRET: clientSecret, STATE_SECRET: stateSecret };
    const missing = Object.entries(oauth).flatMap(([name, told]) => (told === '' ? [`FLOORHAND_SLACK_${name}`] : []));
    if (missing.length === 3) lacks.push('FLOORHAND_SLACK_BOT_TOKEN, or what several workspaces need');
    lacks.push(...missing);
    if (key === '') lacks.push('FLOORHAND_KEY, which seals the tokens of workspaces');
  }
  return lacks;
}
