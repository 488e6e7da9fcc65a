/** Writing results, one class per format, deciding nothing. */
package rigbrief.report;
