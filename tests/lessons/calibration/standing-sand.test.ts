import { calibrated } from './calibrated';

calibrated('standing-sand');
