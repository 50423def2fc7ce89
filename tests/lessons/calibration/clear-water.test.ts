import { calibrated } from './calibrated';

calibrated('clear-water');
