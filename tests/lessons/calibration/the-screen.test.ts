import { calibrated } from './calibrated';

calibrated('the-screen');
