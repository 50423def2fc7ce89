import { calibrated } from './calibrated';

calibrated('blind-well');
