import { calibrated } from './calibrated';

calibrated('bad-day');
