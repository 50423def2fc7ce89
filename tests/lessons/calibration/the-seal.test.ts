import { calibrated } from './calibrated';

calibrated('the-seal');
