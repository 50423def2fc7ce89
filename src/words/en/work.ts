// Words of the work screen: hands, senses, tray, notebook, clock.

export const work = {} as const;
