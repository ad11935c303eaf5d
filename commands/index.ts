/** Every command, in the order in which help lists them. */

import type { Command } from '../src/chat/command.ts';
import compare from './floor/compare.ts';
import guides from './floor/guides.ts';
import layout from './floor/layout.ts';
import planks from './floor/planks.ts';
import resume from './floor/resume.ts';
import help from './help.ts';
import level from './prep/level.ts';
import lift from './prep/lift.ts';
import moisture from './prep/moisture.ts';
import patch from './prep/patch.ts';
import plan from './prep/plan.ts';
import squeaks from './prep/squeaks.ts';
import tearout from './prep/tearout.ts';
import archiveProject from './project/archive.ts';
import copyProject from './project/copy.ts';
import deleteProject from './project/delete.ts';
import found from './project/found.ts';
import handoff from './project/handoff.ts';
import keepAnswer from './project/keep.ts';
import link from './project/link.ts';
import listProjects from './project/list-projects.ts';
import log from './project/log.ts';
import measure from './project/measure.ts';
import mydata from './project/mydata.ts';
import newProject from './project/new.ts';
import pick from './project/pick.ts';
import progress from './project/progress.ts';
import renameProject from './project/rename.ts';
import restoreProject from './project/restore.ts';
import projectRoom from './project/room.ts';
import settings from './project/settings.ts';
import share from './project/share.ts';
import sheets from './project/sheets.ts';
import shopping from './project/shopping.ts';
import showProject from './project/show.ts';
import spend from './project/spend.ts';
import undo from './project/undo.ts';
import useProject from './project/use.ts';
import safety from './safety.ts';
import sources from './sources.ts';
import tape from './tape.ts';
import edges from './trim/edges.ts';
import finish from './trim/finish.ts';
import list from './trim/list.ts';
import reset from './trim/reset.ts';

export const commands: readonly Command[] = [
  planks,
  layout,
  compare,
  resume,
  guides,
  list,
  reset,
  edges,
  finish,
  tearout,
  squeaks,
  patch,
  level,
  moisture,
  lift,
  plan,
  newProject,
  projectRoom,
  pick,
  showProject,
  sheets,
  handoff,
  keepAnswer,
  shopping,
  progress,
  spend,
  log,
  found,
  share,
  measure,
  undo,
  listProjects,
  useProject,
  renameProject,
  copyProject,
  archiveProject,
  deleteProject,
  restoreProject,
  settings,
  link,
  mydata,
  tape,
  safety,
  sources,
  help,
];
