/** The words of Slack around an answer, in forms, on the Home tab and in the app's manifest. */

export const SLACK = {
  asked: 'Asked',
  lookUp: 'Look up',
  more: 'More',
  all: 'Everything as a file',
  pictures: (count: number) => `All ${count} pictures`,
  old: 'This button is from an older version. Ask again and the answer has fresh ones.',
  notShown: 'It could not be posted there. Invite the app to the channel, or copy the ask into it.',
  sent: (files: number) =>
    `It is long, so it is in our direct messages as ${files === 1 ? 'a file' : `${files} files`}.`,
  fileIntro: 'Here is the sheet you asked for.',
  pictureIntro: 'The pictures of your answer.',
  pictureDirect: (count: number) =>
    `The ${count === 1 ? 'picture is in our direct messages too, and stays' : 'pictures are in our direct messages too, and stay'} there.`,
  picturesSent: 'The pictures are in our direct messages.',
  noPictureThere:
    'It is posted without its picture: the app is not in this channel. Invite it and press once more, or pass the picture on from our direct messages.',
  noAsk: 'There is nothing to work out in that message.',
  formSubmit: 'Work it out',
  formClose: 'Cancel',
  formLate: 'Slack did not open the form in time. Press once more.',
  formStale: 'This form is from an older version. Close it and open it again.',
  formTaken: (standard: string) => `Without it: ${standard}.`,
  formProject: 'Without it: what your project tells.',
  formExample: (example: string) => `For instance ${example}`,
  homeTitle: 'Your floor, worked out',
  homeIntro:
    'Send the app a direct message, mention it in a channel, or type /floorhand with an ask: rooms and a plank, in your own words or by options. “/floorhand help” lists everything. Start a project, and it remembers your rooms, picks and what is bought and done.',
  homeStart: 'Start here',
  homeButtons: {
    'floor planks': 'Planks for my rooms',
    'trim list': 'Baseboard to buy',
    'prep tearout': 'The old floor out',
    'project new': 'Start a project',
  } as Readonly<Record<string, string>>,
  homeOther: 'Work out something else',
  homeProject: 'Your project',
} as const;

/** The app's manifest: what people read of it in Slack. */
export const MANIFEST = {
  description: 'Planks, cartons, trim and preparation for people who replace their own floor.',
  longDescription:
    'Ask in your own words or by options: how many cartons of plank your rooms need and how to lay them row by row, which sticks of trim to buy and where to cut them, what a tear-out weighs, how to mend and level a subfloor. Answers are exact, name how they were read, carry the cautions that matter and tell where each figure comes from. Only you see an answer until you show it to the channel.',
  command: 'Work out planks, trim and preparation for your floor',
  hint: 'planks room: 12x14, plank: 6 x 48 in, 10 per carton',
  message: 'Work out quantities',
  messageDescription: 'Reads the sizes and planks in a message and works out what they need',
  global: 'Work out a floor',
  globalDescription: 'Opens a form for your rooms and your plank',
} as const;
