// Stands in for the marker that keeps server code out of the browser: a test is neither.
export {};
