/** All entries of a file unpacked, in bytes. */
export const mostUnpacked = 256 * 1024 * 1024;
