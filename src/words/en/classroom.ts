// Words of the class: the instructor's page, the guide, an exercise that came, giving one out.

export const classroom = {} as const;
