import type {Surroundings} from './command.ts';

/** What is typed before a command's name, the way this run was started: npm says in the environment how it starts a program. */
export function howToRun({environment}: Surroundings): string {
  if (environment.npm_lifecycle_event === 'swatchleaf') return 'npm run swatchleaf --';
  return environment.npm_command === 'exec' ? 'npx swatchleaf' : 'swatchleaf';
}
