// What she can do, by what it is about.
export * from "./acts-copy";
export * from "./acts-own";
export * from "./acts-send";
export * from "./acts-story";
export * from "./acts-week";
