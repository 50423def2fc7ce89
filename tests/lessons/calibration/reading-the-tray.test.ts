import { calibrated } from './calibrated';

calibrated('reading-the-tray');
