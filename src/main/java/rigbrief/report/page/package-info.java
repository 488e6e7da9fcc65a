/** Documents for clients and for the bench: one self-contained page each, as HTML, PDF or text. */
package rigbrief.report.page;
