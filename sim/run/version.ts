// The version of the physics and its numbers. It changes whenever a run of the same scenario, seed and log could end in another state.

export const SIM_VERSION = '0.4.0';
