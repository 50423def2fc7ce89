import { calibrated } from './calibrated';

calibrated('full-pit');
