import type {Dialect} from '../knitting/rows/stitch.ts';
import type {BinderSettings} from './schema/binder-settings.ts';

/** Whose abbreviations the binder explains: those of the language it is written in. */
export function dialectOf({language}: Pick<BinderSettings, 'language'>): Dialect {
  return language === 'en-US' ? 'american' : 'british';
}
