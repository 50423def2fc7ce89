import { calibrated } from './calibrated';

calibrated('slick-fluid');
