import { calibrated } from './calibrated';

calibrated('stiff-clay');
