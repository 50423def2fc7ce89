import { calibrated } from './calibrated';

calibrated('round-the-loop');
