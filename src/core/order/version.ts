/** Version of the rules and of everything the score is worked out from. A run made under another version is said to be so. */
export const rulesVersion = 3;
