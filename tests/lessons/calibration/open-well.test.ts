import { calibrated } from './calibrated';

calibrated('open-well');
