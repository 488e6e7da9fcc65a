/** Running the models over one build under one brief, each on first use. */
package rigbrief.assess;
