/**
 * Tests say themselves when they play a forge. Run on one they do what they do anywhere: no colours in what is
 * printed, and a cache that is kept.
 */
delete process.env.CI;
