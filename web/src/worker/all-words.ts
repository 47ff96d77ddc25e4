// Every sentence there is, fetched by a first card that comes to say something unusual.

export { allWords } from '#engine';
