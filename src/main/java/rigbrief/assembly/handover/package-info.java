/** Turning a build into what its owner is told: promises, settings, care, what fits next. */
package rigbrief.assembly.handover;
