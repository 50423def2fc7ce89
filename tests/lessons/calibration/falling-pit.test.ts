import { calibrated } from './calibrated';

calibrated('falling-pit');
