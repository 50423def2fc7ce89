import { calibrated } from './calibrated';

calibrated('deep-enough');
