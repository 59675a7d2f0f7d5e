import { useApp } from '../app/store';
import { DocumentGrid } from './document-grid';
import { useDocument } from './use-document';

/** What one harness needs, counted from the model. */
export function PartsListPage() {
  const table = useDocument('parts-list');
  const unit = useApp((s) => s.view.lengthUnit);
  return (
    <DocumentGrid
      table={table}
      empty="Nothing is placed yet, so nothing is needed. Place a connector on the Diagram page."
      head={(tools) => (
        <div className="bar">
          <h2>
            {table.title}{' '}
            <span className="second bar-note">
              for one harness{unit === 'in' ? ', lengths in metres as ordered' : ''}
            </span>
          </h2>
          {tools}
        </div>
      )}
    />
  );
}
