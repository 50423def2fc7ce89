// A sign for the wall: a number or a picture. What else a result may call its learner could be a name, and stays off the wall.
import { isPicture } from '../../../app/pictures';
import { whoWords } from '../../../app/who';
import { t } from '../../../words';

export const signWords = (who: string): string =>
  isPicture(who) || /^T-\d{2,3}$/.test(who) ? whoWords(who) : t('results.sign.other');
