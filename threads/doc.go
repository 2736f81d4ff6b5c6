// Package threads holds the screw threads that old small engines carry.
package threads
