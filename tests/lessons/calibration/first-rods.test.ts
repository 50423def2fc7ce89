import { calibrated } from './calibrated';

calibrated('first-rods');
