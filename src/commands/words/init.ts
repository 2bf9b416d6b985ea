import {citationStyles, papers, ringCounts, unitSystems} from '../../model/print-choices.ts';
import {type CommandWords, textOption} from '../command.ts';

export const init: CommandWords = {
  name: 'init',
  summary: 'lay down a new binder folder: binder file, starter syllabus, library and an example of each kind',
  arguments: [
    {
      spelling: '[folder]',
      says: 'the folder of the new binder, made if it is not there; this one when left out',
    },
  ],
  options: [
    {spelling: '--name <name>', says: 'your name, as it is printed'},
    {spelling: '--paper <paper>', says: 'the paper in your printer', choices: papers},
    {spelling: '--rings <number>', says: 'how many rings the binder has', choices: ringCounts.map(String)},
    {spelling: '--units <units>', says: 'which unit stands first', choices: unitSystems},
    {spelling: '--style <style>', says: 'how sources are cited', choices: citationStyles},
    {spelling: '--example', says: 'copy the worked example instead, a whole submission'},
  ],
  examples: [
    'swatchleaf init my-binder',
    'swatchleaf init my-binder --name "Ann Weaver" --paper Letter',
    'swatchleaf init example --example',
  ],
  writesInto: ({words}) => words[0] ?? '.',
  async run(typed, around) {
    const {runInit} = await import('../init.ts');
    return runInit(typed.words[0] ?? '.', around, {
      name: textOption(typed, 'name'),
      paper: textOption(typed, 'paper'),
      rings: textOption(typed, 'rings'),
      units: textOption(typed, 'units'),
      style: textOption(typed, 'style'),
      example: typed.options.example === true,
    });
  },
};
