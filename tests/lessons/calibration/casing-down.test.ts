import { calibrated } from './calibrated';

calibrated('casing-down');
